# Japanese: photographs of what was measured

act-photo = 写真{ $file }{ $x ->
        [none] 、測定箇所の印なし
       *[other] 、測定箇所は左から{ $x }、上から{ $y }（千分率）
    }

# Whether a photograph that was named can be shown, and what to do where it can't.
photo-at_hand = 写真{ $file }は手元にあります。
    .remedy = 何もする必要はありません。
photo-not_at_hand = 写真{ $file }が指定されていますが、手元にありません。
    .remedy = 指定したときの名前のまま、結果と一緒にファイルを渡してください。
photo-other_file = 写真{ $file }は、指定されたものとは別の画像です。ダイジェストが異なります。
    .remedy = 指定したファイルを渡すか、この写真を指定し直してください。
photo-several_files = { $file }という名前のファイルが複数あり、どれを指すか分かりません。
    .remedy = ファイルをフォルダー付きの名前で指定するか、そのSHA-256を指定してください。
photo-no_photo = ファイル{ $file }は、JPEGでもPNGでもありません。
    .remedy = 画像をJPEGまたはPNGで保存し、そのファイルを渡してください。JPEGで保存するように設定できるカメラやスマートフォンも多くあります。
photo-damaged_photo = 画像{ $file }が途中で切れているか、壊れています。
    .remedy = カメラまたはUSBメモリーからファイルをもう一度コピーしてください。
photo-photo_too_large = 画像{ $file }は、報告書に入れられる大きさを超えています。上限は1 MiB、1600万画素で、読み取るファイルは最大64 MiBです。
    .remedy = 小さいコピーを作り（長辺1024画素で足ります）、それを指定してください。ページでは自動で行います。
photo-too_many_photos = 画像{ $file }は、1回の検査に入れられる量を超えています。上限は写真200枚、合計24 MiBです。
    .remedy = 新たに示すもののない写真を省くか、納入品を2回の検査に分けてください。

photo-trouble = { $text }対象：{ $of }。{ $remedy }

report-photos = 写真
report-photos_text = 人が測定または材料に結び付けた写真です。十字入りの輪は、人が置いた測定箇所の印です。写真は結果ではありません。カメラが画像に添えて書き込む情報は除いて印字しています。
report-photos_missing = 指定されたが手元にない写真
report-photos_no_reading = この測定または材料は、結果にありません。
report-photos_spot = 測定箇所：左から{ $x } %、上から{ $y } %。
report-photos_no_spot = 測定箇所の印はありません。
report-photos_outcome = { $substances }：{ $outcome }
report-photos_file = { $file }、{ $width } × { $height } 画素
report-photos_original = 渡されたファイルのSHA-256：
report-photos_print = ここに印字した画像のSHA-256：
report-photos_alt = { $of }の写真{ $file }。{ $n ->
        [0] 測定箇所の印はありません。
       *[other] { $n }か所の測定箇所に印があります。
    }
