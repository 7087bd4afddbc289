# Photographs of what was measured.

act-photo = photograph { $file }{ $x ->
        [none] , no spot marked
       *[other] , spot at { $x } and { $y } thousandths
    }

# Whether a photograph that was named can be shown, and what to do where it can't.
photo-at_hand = The photograph { $file } is at hand.
    .remedy = Nothing to do.
photo-not_at_hand = The photograph { $file } was named and is not at hand.
    .remedy = Give the file together with the results, under the name it had when it was named.
photo-other_file = The photograph { $file } is another picture than the one that was named: its digest differs.
    .remedy = Give the file that was named, or name this one anew.
photo-several_files = Several files are named { $file }, and nothing says which is meant.
    .remedy = Name the file with its folder, or state its SHA-256.
photo-no_photo = The file { $file } is neither a JPEG nor a PNG picture.
    .remedy = Save the picture as JPEG or PNG and give that file. A camera or a phone can often be set to write JPEG.
photo-damaged_photo = The picture { $file } is cut short or damaged.
    .remedy = Copy the file once more from the camera or the stick.
photo-photo_too_large = The picture { $file } is larger than a report takes: up to 1 MiB, 16 million pixels, and 64 MiB for a file that is read at all.
    .remedy = Make a smaller copy (1024 pixels on the longer side are enough) and name that. The page does so by itself.
photo-too_many_photos = The picture { $file } is beyond what one inspection takes: 200 photographs, 24 MiB in all.
    .remedy = Leave out photographs that show nothing more, or divide the delivery into two inspections.

photo-trouble = { $text } It belongs to: { $of }. { $remedy }

report-photos = Photographs
report-photos_text = What a person joined to a reading or a material. The ring with a cross marks the spot that was measured, as the person placed it; the picture is no result. Pictures are printed without what a camera writes beside them.
report-photos_missing = Photographs named, not at hand
report-photos_no_reading = This reading or material is not in the results.
report-photos_spot = Spot measured: { $x } % from the left, { $y } % from the top.
report-photos_no_spot = No spot is marked.
report-photos_outcome = { $substances }: { $outcome }
report-photos_file = { $file }, { $width } × { $height } pixels
report-photos_original = SHA-256 of the file as it was given:
report-photos_print = SHA-256 of the picture printed here:
report-photos_alt = Photograph { $file }, showing { $of }. { $n ->
        [0] No spot is marked.
        [one] The measured spot is marked.
       *[other] { $n } measured spots are marked.
    }
