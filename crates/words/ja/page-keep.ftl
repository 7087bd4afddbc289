# Keeping: the recovery copy, the inspection file, leaving nothing behind.

## In the head of the page

page-keep-open = 保存
page-keep-state-file = { $time }にファイルへ保存済み
page-keep-state-copy = 復元用コピーに保存済み
page-keep-state-none = 未保存

## Steps, as they are named when they are taken back

page-keep-step-files = { $n ->
    [1] { $name }の取込み
   *[other] { $n }個のファイルの取込み
  }
page-keep-step-out = { $name }の取外し
page-keep-step-put-back = { $name }を戻したこと
page-keep-step-settings = { $name }の設定
page-keep-step-rule-book = { $name }の規則集
page-keep-step-mapping = { $name }の列の意味
page-keep-step-history = { $name }の履歴
page-keep-step-bill = { $name }の材料構成表
page-keep-step-photos = 写真{ $n }枚の取込み
page-keep-step-set-aside = 測定{ $n }件の除外
page-keep-step-and-more = { $act }、ほか{ $n }件
page-keep-taken-out = { $name }を外しました。
page-keep-put-back = 戻す
page-keep-event-put-back = { $name }を戻しました。

## The panel

page-keep-heading = 保存と復元
page-keep-training = これは架空のデータによる練習です。復元用コピーは作りません。
page-keep-off = この検査は、このコンピューターに何も残しません。ブラウザーを閉じると失われます。残すには、ファイルに保存してください。
page-keep-unsaved-full = 復元用コピーの空きがありません。これからの操作はコピーに入りません。作業は続けられます。ここで検査をファイルに保存してください。
page-keep-unsaved-refused = このブラウザーでは、復元用コピーを残せません。プライベートウィンドウや、このコンピューターの規則が原因かもしれません。作業は続けられます。ここで検査をファイルに保存してください。
page-keep-event-code = 復元コードを表示しています。書き留めてください。
page-keep-code-name = 復元コード
page-keep-code-new = このコードを書き留めて、手元に置いてください。ここでの操作はすべて、ただちに暗号化してこのコンピューターに保存します。異常終了の後は、このコードでしか元に戻せません。
page-keep-code-again = 異常終了の後は、このコードですべて元に戻せます。
page-keep-code-hint = このページはコードをどこにも保存しません。コードがなければ、誰もコピーを開けず、代わりのコードも出せません。ファイルにする場合は、このコンピューターではなくUSBメモリーに置いてください。
page-keep-noted = 書き留めました
page-keep-copy-code = コードをコピー
page-keep-save-code = コードをテキストファイルに
page-keep-code-file = Plumblineの検査の復元コードです。コピーを作ったブラウザーで、暗号化されたコピーを開きます。そのコンピューターとは別の場所に保管してください。
page-keep-event-noted = コードは「保存」でいつでも確認できます。
page-keep-event-code-copied = コードをコピーしました。
page-keep-event-code-marked = コードを選択しました。キー操作でコピーしてください。
page-keep-file-what = 別の場所や別の日に続けるには、検査を保存してください。ファイル、設定、記録したすべてが1つのファイルに入ります。そのファイルを持つ人は、誰でも中を読めます。
page-keep-file-kind = 検査
page-keep-save-as = 検査を保存…
page-keep-download = 検査をダウンロード
page-keep-event-saved = { $file }を保存しました。
page-keep-close = 閉じて削除
page-keep-close-hint = 閉じると、この検査の復元用コピーをこのコンピューターから削除します。このページを開いている間は、まだ検査に戻れます。
page-keep-event-closed = 閉じました。復元用コピーをこのコンピューターから削除しました。
page-keep-others = このブラウザーに、ほかの復元用コピーが{ $n }個あります。
page-keep-remove-others = { $n ->
    [1] 削除
   *[other] { $n }個すべて削除
  }

## What the copy is against, and what not

page-keep-threats = コピーで防げること、防げないこと
page-keep-threat-copied = どの操作も、記録したと表示する前にコピーに入ります。異常終了、ブラウザーの強制終了、USBメモリーの取外しの後も、元の所から続けられます。
page-keep-threat-where = コピーはUSBメモリーではなく、このコンピューターのこのブラウザーにあります。暗号化していないのは、保存した日時、記録の数、ファイルの数だけです。
page-keep-threat-against = このブラウザーに残るものをほかの人やほかのページが見ても、コードがなければ何も読めません。記録の変更、移動、欠落は検出してお知らせします。
page-keep-threat-not-against = 操作を見ている人、今動いている有害なプログラム、メモリーの中身やシステムがそれをディスクに書き出したもの、コピーを削除したり古いものに置き換えたりする人に対しては、守れません。
page-keep-threat-code = 書き留めたコードを見つけ、このコンピューターを使える人は、コピーを開けます。
page-keep-threat-size = { $size }を超えるファイルは、待ち時間とディスクの使用を抑えるため、コピーしません。名前、大きさ、ダイジェストだけを残し、後で選び直していただきます。
page-keep-threat-closed = 「新しい検査」を押してもコピーは残ります。戻れるようにするためです。「閉じて削除」、「このコンピューターに何も残さない」、または最初の画面で削除します。ダウンロードしたファイルは、ブラウザーが置いた場所に残り、このページからは削除できません。

## Leave nothing

page-keep-leave-off = 復元用コピーを作らず、列の意味も言語も表示モードも残しません。残っていたものはただちに削除します。残るのは、この指定だけです。
page-keep-leave-on = 復元用コピーも、列の意味も、言語も残しません。残すのはこの指定だけで、作業の内容は含みません。ダウンロードしたファイルは、ブラウザーが置いた場所に残ります。

## Copies found

page-keep-found = 復元できる検査が{ $n }件あります
page-keep-found-what = このブラウザーに復元用コピーがあります。書き留めたコードでだけ開けます。
page-keep-found-one = { $when }に保存：記録{ $records }件、ファイル{ $files }個
page-keep-found-many = 古いものは、もう必要ないかもしれません。
page-keep-found-where = このブラウザーに残るもの
page-keep-code-typed-hint = 大文字と小文字、空白、ハイフンの違いは問いません。
page-keep-bring-back = 復元
page-keep-remove = 削除
page-keep-remove-older = 古い{ $n }件を削除
page-keep-removed = 復元用コピー{ $n }個をこのコンピューターから削除しました。
page-keep-event-copies-back = 戻しました。
page-keep-work-opening = 復元用コピーを開いています
page-keep-code-odd = 「{ $sign }」はコードに使いません。書き留めたものを確かめてください。数字の0、1、5、8と、文字のB、I、L、O、S、U、V、Zは使いません。
page-keep-code-length = コードは{ $of }文字です。入力は{ $n }文字です。抜けや重複がないか確かめてください。
page-keep-code-wrong = このコードで開けるコピーは、このブラウザーにありません。何も失われていません。書き留めたものを確かめて、もう一度入力してください。
page-keep-not-back-what = 復元用コピーを開けませんでした。
page-keep-browser-why = ブラウザーが、残しているものへのアクセスを許しませんでした。
page-keep-not-back-todo = コピーはそのまま残っています。もう一度試してください。同じことが起きたら、ファイルから始めてください。
page-keep-not-removed-what = このブラウザーに残るものを削除できませんでした。
page-keep-not-removed-todo = もう一度試すか、ブラウザーの設定でデータを消去してください。
page-keep-event-recovered = { $n ->
    [1] 検査を、ファイルと操作とともに復元しました。
   *[other] { $n }件の検査を復元しました。最新のものを表示しています。ほかは「前の検査に戻る」で開けます。
  }
page-keep-lost-what = 復元用コピーは、変更されたか壊れています。
page-keep-lost-where = { $when }に保存した復元用コピー
page-keep-lost-why = { $n ->
    [1] 1件の記録が書いたときと違うか、欠けています。それより前はすべて復元しました。
   *[other] 書いたときと違うか欠けている記録があります。それ以降の合計{ $n }件は使えませんでした。それより前はすべて復元しました。
  }
page-keep-lost-todo = 最後の記録を見て、足りないものをもう一度記録してください。壊れたコピーはそのまま残り、最初の画面で削除できます。同じコードで新しいコピーを始めました。

## Inspection files

page-keep-event-opened = { $name }の検査を、ファイルと操作とともに開きました。
page-keep-event-changed = 一緒に選んだファイルのうち{ $n }個は、保存したときと違います：{ $names }。
page-keep-event-awaited = { $n }個のファイルを選び直す必要があります。「保存」をご覧ください。
page-keep-changed-what = 検査を保存した後に変わったファイルがあります。
page-keep-changed-why = 同じ名前ですが、中身が違います。検査は、元のファイルのまま開いています。
page-keep-changed-todo = 変わったファイルを使うには、「何が届いたか」で古いファイルを外し、新しいファイルを結果ファイルとして選んでください。
page-keep-acts-what = 検査の一部を取り込めませんでした。
page-keep-acts-why = { $of }件の操作のうち{ $n }件を取り込みました。残りは、このPlumblineでは受け付けません。
page-keep-acts-todo = 保存したときのバージョンのPlumblineで開いてください。
page-keep-not-opened-what = 検査ファイルを開きませんでした。何も変わっていません。
page-keep-not-opened-newer-why = より新しいPlumbline（{ $schema }）で書かれ、このバージョンでは形式を読めません。
page-keep-not-opened-newer-todo = 新しいPlumblineで開いてください。
page-keep-not-opened-damaged-why = この部分が壊れています。書いたときの中身と違います。
page-keep-not-opened-damaged-todo = 元の場所からもう一度コピーしてください。それでも開けなければ、結果ファイルから始めてください。
page-keep-not-opened-foreign-why = Plumblineが書いた形式ではありません（{ $schema }）。
page-keep-not-opened-foreign-todo = Plumblineが保存したままのファイルをもらってください。
page-keep-part-list = 先頭
page-keep-part-head = 記録した内容
page-keep-part-file = { $name }の入った部分
page-keep-awaited = 大きすぎて検査と一緒に残せなかったファイルです。選び直してください：
page-keep-choose-again = 選ぶ
page-keep-without = これなしで続ける
page-keep-other-file-what = 待っているファイルではありません。
page-keep-other-file-why = 同じ名前ですが、中身が違います（このファイルは{ $size }、待っているファイルは{ $meant }）。
page-keep-other-file-todo = 元のままのファイルを選んでください。代わりにこのファイルを使うには、「保存」を開き、古いファイルなしで続けてから、これをもう一度選んでください。

page-trouble-kept-what = ファイルを元の場所から読み取れなくなりました。
page-trouble-kept-why = USBメモリーが取り外されたか、ファイルが移動または変更されたのかもしれません。取り込んだときの内容は復元用コピーにあります。
page-trouble-kept-todo = 失われたものはありません。取り込んだ内容で作業を続けます。変更後のファイルを使う場合は、取り除いて選び直してください。
