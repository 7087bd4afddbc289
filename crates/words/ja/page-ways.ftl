# Finding the way: doors, places, the next action, the self-check sheet, the look.

# The look
page-theme = 表示モード
page-theme-system = システムに合わせる
page-theme-light = ライト
page-theme-dark = ダーク

## Addresses

page-address-nothing = このアドレスが指すものは、ここにありません。別のファイルのものだったのかもしれません。
page-address-no-data = このアドレスは、ここで開いていない検査のものです。そのファイルをもう一度入れるか、検査を復元してください。
page-address-typed-gone = 絞り込みに入力した文字はアドレスに残さないため、なくなりました。アドレスの残りの部分を表示しています。

## Doors

page-door-change = 使い方を選び直す
page-door-inspect-go-on = 開いているファイルのまま検査として続ける
page-door-ship-go-on = 開いているファイルのまま自己点検として続ける
page-event-door-inspect = 納入品の検査に変わりました。失われたものはありません。もう一方の入口にも戻れます。
page-event-door-ship = 供給者の自己点検に変わりました。失われたものはありません。もう一方の入口にも戻れます。

## The self-check sheet

page-take-self-check = 自己点検シート
page-take-self-check-why = 控えと顧客のためのもの：顧客が保留または受入れ不可とするものと、出荷前にすることを示します。適合宣言ではありません。
page-take-self-check-count = { $n }ロット。
page-take-self-check-none = ロットがないため、シートはありません。

## The next action

page-do = 次にすること
page-do-later = あとで
page-do-later-done = 後回しにしました：{ $what }。最後にまた出てきます。
page-do-waiting = 後回しにしたもの：{ $n }件。
page-do-put-off = 後回しにしたものに取りかかる
page-event-last = 直前：
page-do-book = 顧客の規則集を追加する
page-do-book-why = この点検は顧客自身の限度値によります。そのファイルがなければ、このプログラムに付属する規則集を使います。
page-do-bring = 結果ファイルを入れる
page-do-bring-why = まだ何も届いていません。USBメモリーのファイルをそのまま選んでください。
page-do-bring-why-ship = これから出荷するものの測定を入れてください。
page-do-unread = { $name }を見る
page-do-unread-why = { $name }を読み取れなかったため、測定したものが欠けているおそれがあります。
page-do-question-why = ファイルだけでは決まりません。
page-do-question-unit-not-stated = 単位を指定する
page-do-question-sigma-multiple-not-stated = 誤差が何シグマかを指定する
page-do-question-decimal-mark-unclear = 小数点の記号を指定する
page-do-question-date-order-unclear = 日付の順序を指定する
page-do-question-class-not-stated = 材料区分を指定する
page-do-columns = { $n }列を見る
page-do-columns-why = { $name }には、意味をはっきり決められない列があります。
page-do-refused = 取込み不可の{ $n }行を見る
page-do-refused-why = { $name }に使えなかった行があります。行ごとに理由を示しています。ファイルを直して入れ直すか、そのままにしてください。
page-do-evidence-class = 材料区分を指定する
page-do-evidence-layer = 層と下地に別々の名前を付けるか、両方をめっきと指定する
page-do-evidence-sigma = 誤差が何シグマかを指定する
page-do-evidence-thickness = 厚さを入力する
page-do-evidence-materials = 部品の材料をすべて入力する
page-do-evidence-lot-size = { $named ->
    [yes] ロット{ $lot }の大きさを入力する
   *[no] 名前のないロットの大きさを入力する
  }
page-do-evidence-units-to-take = { $named ->
    [yes] ロット{ $lot }から抜き取る個数を入力する
   *[no] 名前のないロットから抜き取る個数を入力する
  }
page-do-evidence-sampling = 抜取検査を見る
page-do-evidence-trust = 点検用試料を指定する
page-do-evidence-certificate = 点検用標準試料の認証書を入力する
page-do-evidence-doubtful = 疑わしいものの別の測定を入れる
page-do-evidence-claims = 適用除外の主張を補う
page-do-claim = 適用除外が当てはまるかを見る
page-do-claim-why = { $material }の{ $substance }が限度値を超えており、適用除外はまだ誰も主張していません。
page-do-evidence-cr6 = 面積当たりの結果を補う
page-do-evidence-laboratory = 試験所の結果を補う
page-do-evidence-books = どの規則集によるかを決める
page-do-evidence-halogens = どのハロゲンの規則集によるかを決める
page-do-evidence-holds = 保留を見る
page-do-again-trust-failed = 測定し直して結果を入れ、古い測定を除外する
page-do-again-trust-none = これらの測定に合う点検用標準試料を測定して結果を入れる
page-do-again-check = 点検用標準試料の測定の不足を補う
page-do-again-trust-not-bracketed = 2つの点検の間で測定して結果を入れ、古い測定を除外する
page-do-again-sampling-too-few = 個体を追加で測定して結果を入れる
page-do-again-material-not-measured = 未測定の材料を測定して結果を入れる
page-do-lot-hold = { $named ->
    [yes] ロット{ $lot }の保留を誰が解消するかを入力する
   *[no] 名前のないロットの保留を誰が解消するかを入力する
  }
page-do-lot-not-accept = { $named ->
    [yes] ロット{ $lot }について決定する人を入力する
   *[no] 名前のないロットについて決定する人を入力する
  }
page-do-field-title = 報告書に表題を付ける
page-do-field-inspector = 測定した人を入力する
page-do-field-place = 測定した場所を入力する
page-do-field-reviewed-at = 日付を入力する
page-do-field-contact = 質問に答える人を入力する
page-do-field-customer = 顧客（報告書の宛先）を入力する
page-do-field-why = 報告書の冒頭の、その欄が空いています。
page-do-sheet = 自己点検シートを取り出す
page-do-sheet-why = 顧客が何を保留とするか、出荷前に何をすべきかを示します。
page-do-report = 報告書を取り出す
page-do-report-why = 今ほかにすることはありません。報告書はまだ保存していません。
page-do-again = 次の納入品を始める
page-do-again-why = すべて済み、保存されています。
page-do-again-why-left = { $n }件が未解決のままで、報告書にその旨が記されています。すべて保存されています。
page-do-lesson = 次の納入品へ進む
page-do-lesson-why = この納入品は、好きなだけ見ていて構いません。
page-do-lesson-last = 次に何をするかを選ぶ
page-do-lesson-last-why = これが最後の納入品でした。
page-do-fresh = 練習室に戻る
page-do-fresh-why = このロットを本物と同じようにレビューしてください。別のシードからは別のロットができます。
page-do-room = レッスンに進む
page-do-room-why = どこまで進んだかは、練習室に示されています。
page-do-lessons = レッスン一覧に戻る
page-do-exercise = 問題{ $n }に答える
page-do-exercise-why = まず自分で判断します。そのあとプログラムが計算の筋道を示します。
page-do-after = このレッスンの次へ進む
page-do-after-why = このページの問題にはすべて答えました。
