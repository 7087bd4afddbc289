# Simplified Chinese: photographs of what was measured

act-photo = 照片{ $file }{ $x ->
        [none] ，未标出测点
       *[other] ，测点在横向千分之{ $x }、纵向千分之{ $y }处
    }

# Whether a photograph that was named can be shown, and what to do where it can't.
photo-at_hand = 照片{ $file }已给出。
    .remedy = 无需处理。
photo-not_at_hand = 指明了照片{ $file }，但没有给出该文件。
    .remedy = 将该文件与结果一起给出，文件名与指明时相同。
photo-other_file = 照片{ $file }不是所指明的那张：摘要不同。
    .remedy = 给出所指明的那个文件，或重新指明此文件。
photo-several_files = 有几个文件都名为{ $file }，无从看出指的是哪一个。
    .remedy = 连同文件夹一起写出文件名，或注明其SHA-256。
photo-no_photo = 文件{ $file }既不是JPEG图片，也不是PNG图片。
    .remedy = 将图片保存为JPEG或PNG，再给出该文件。相机或手机往往可以设为保存JPEG。
photo-damaged_photo = 图片{ $file }不完整或已损坏。
    .remedy = 从相机或U盘重新复制一次该文件。
photo-photo_too_large = 图片{ $file }大于报告所能采用的上限：1 MiB、1600万像素；能够读取的文件最大64 MiB。
    .remedy = 制作较小的副本（长边1024像素即可），再指明该副本。页面会自动这样做。
photo-too_many_photos = 图片{ $file }超过一次检验所能采用的上限：200张照片，共24 MiB。
    .remedy = 去掉没有更多内容的照片，或将此次到货分成两次检验。

photo-trouble = { $text }它属于：{ $of }。{ $remedy }

report-photos = 照片
report-photos_text = 由人关联到读数或材料的照片。带十字的圆环标出所测的测点，位置由人指定；照片不是结果。相机另写在图片里的信息不印出。
report-photos_missing = 已指明但未给出的照片
report-photos_no_reading = 结果中没有此读数或材料。
report-photos_spot = 所测的测点：距左边{ $x } %，距上边{ $y } %。
report-photos_no_spot = 未标出测点。
report-photos_outcome = { $substances }：{ $outcome }
report-photos_file = { $file }，{ $width } × { $height }像素
report-photos_original = 所给文件的SHA-256：
report-photos_print = 此处所印图片的SHA-256：
report-photos_alt = 照片{ $file }，拍的是{ $of }。{ $n ->
        [0] 未标出测点。
       *[other] 标出了{ $n }个所测的测点。
    }
