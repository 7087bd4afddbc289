# Japanese: the report: what standards ask it to hold, its three lengths, and how acts read in it

## What a person states for the report

act-issuer = 報告書の発行者：{ $name }{ $address ->
        [none] { "" }
       *[other] 、{ $address }
    }
act-customer = 報告書の宛先：{ $name }{ $contact ->
        [none] { "" }
       *[other] 、{ $contact }
    }
act-received = 受領日 { $value }
act-sampled = 試料の採取：日付 { $date ->
        [none] 記載なし
       *[other] { $date }
    }、採取者 { $by ->
        [none] 記載なし
       *[other] { $by }
    }、場所 { $place ->
        [none] 記載なし
       *[other] { $place }
    }、方法 { $method ->
        [none] 記載なし
       *[other] { $method }
    }
act-item = 品目：{ $description ->
        [none] 説明なし
       *[other] { $description }
    }。状態：{ $condition ->
        [none] 記載なし
       *[other] { $condition }
    }
act-issued_on = 報告書の発行日 { $value }
act-environment = 測定した場所の条件：{ $value }
act-deviations = 方法への追加、方法からの逸脱・除外：{ $value }
act-instrument = 装置：{ $value }
act-authorised = 報告書の承認者：{ $by }、2人目：{ $second ->
        [none] 記載なし
       *[other] { $second }
    }
act-records_kept = 記録の保管：{ $value }
act-invented = { $value ->
        [yes] データは教育訓練用の架空のもの
       *[no] データは架空のものではない
    }

## Values of acts, in words

said-trust-holding = ロットを保留にする
said-trust-advisory = 保留にせず、印字する
said-sampling-holding = ロットを保留にする
said-sampling-advisory = 保留にせず、印字する
said-materials-holding = ロットを保留にする
said-materials-advisory = 保留にせず、印字する
said-repeats-same_spot = 試料IDが同じで、記載された測定箇所も同じもの
said-repeats-same_id = 試料IDが同じもの（箇所の記載がない場合も）
said-repeats-never = なし。測定はそれぞれ単独
said-uncertainty_holds-repeatability = 繰返し性だけ
said-uncertainty_holds-everything = 校正、マトリックス、サンプリングも含め、すべて
said-mark-check = 点検用標準試料
said-mark-blank = ブランク
said-mark-product = 品物（点検ではない）
said-category-8 = 8（体外診断用かその他か記載なし）
said-category-8ivd = 8（体外診断用医療機器）
said-category-8o = 8（その他の医療機器）
said-category-9 = 9（産業用かその他か記載なし）
said-category-9i = 9（産業用監視・制御機器）
said-category-9o = 9（その他の監視・制御機器）
said-site_sigma = { $class }中の{ $element }、1シグマ { $s }、{ $seconds ->
        [none] 測定時間の記載なし
       *[other] { $seconds }秒の測定
    }、うち{ $constant ->
        [none] 一定の部分はなし
       *[other] { $constant }は一定
    }

## Lengths and parts

length-one_page = 1ページ版
length-full = 報告書全文
length-annex = 附属書
report-parts = 報告書{ $number }の全3部のうち第{ $part }部：{ $name }。同じ番号のほかの部：{ $others }。
report-part_named = 第{ $part }部、{ $name }（{ $file }）
report-part_short = 全3部のうち第{ $part }部
report-contents = この部には次の欄がこの順にあり、「{ $end }」で終わります：
report-invented = 教育訓練用の架空のデータ。この報告書は、実在するものについては何も述べていません。
report-invented_short = 架空のデータ
report-annex_elsewhere = すべての測定は、ファイルと行とともに、この報告書の第3部である附属書（{ $file }）にあります。

## Who, for whom, when

report-issuer = 発行者
report-customer = 宛先
report-issued_on = 発行日
report-authorised = 承認者
report-authorised_second = 2人目
report-relates = 結果は、試験した品目だけに関するものです。この報告書は、発行者が書面で同意しない限り、すべての部を含む全体としてだけ複製できます。

## Items

report-items = 品目、その状態、採取の仕方
report-items_text = 操作の記録に名前のある人の申告どおりです。どのロットも供給者とロットで、その部品と材料は結果にある名前で識別します。
report-items_capped = { $total }ロットのうち、最初の{ $shown }ロットを印字しています。すべてはfindings.jsonにあります。
report-description = 説明
report-condition = 状態
report-received = 受領日
report-sampled = 試料の採取（日付、採取者、場所）
report-sampled_method = 抜取りの方式または方法
report-sampled_plan = 抜取検査方式はロットの欄にあります
report-none_stated_plan = 方式の記載なし

## How it was measured

report-measured = 測定の方法、場所、日時、測定者
report-measured_when = 測定日
report-measured_days = { $from }から{ $until }まで
report-measured_undated = 読み取れる日付のない測定が{ $count }件
report-operators = 測定者
report-instruments = 装置
report-modes = 測定モード
report-seconds = 測定時間
report-seconds_range = { $from }～{ $until }秒
report-seconds_one = { $from }秒
report-environment = 条件
report-deviations = 方法への追加、方法からの逸脱・除外
report-deviations_aside = { $count }件の測定が、人により理由とともに除外されました。「除外された測定」の欄を参照。
report-deviations_refused = { $count }行は取込み不可で、何にも数えていません。「元のファイル」の欄を参照。
report-deviations_said = { $text }。
report-external = 外部提供者による結果
report-external_none = なし：試験所の結果は渡されていません。
report-external_count = 試験所の結果{ $count }件。「試験所の結果」の欄を参照。
report-external_text = 外部提供者による結果：これらを得たのは試験所であり、この報告書の発行者ではありません。
report-records_kept = 記録の保管
report-and_more = { $list }、ほか{ $count }件

## Decision rule and opinions

report-inherent = 判定ルール：方法の判定域そのものがルールです。判定域はそれ自体にガードバンドを含むため（限度値から下は下端まで、上は上端まで、さらにその外側に{ $k } s）、ほかのガードバンドは加えません（ISO/IEC 17025:2017, 7.8.6.1; ILAC-G8:09/2019）。
report-risk = 判定ルールのリスク：sが正しく、測定が真の値を中心に正規分布でばらつき、ほかに誤りがないとき、含有量が下端に等しい材料の測定が限度値未満とされる確率は{ $chance } %、含有量が上端に等しい材料の測定が限度値超過とされる確率も{ $chance } %です。したがって、限度値以上の含有量が限度値未満とされる確率、限度値以下の含有量が限度値超過とされる確率は、さらに小さくなります。少数の繰返しからsを求める場合は、より大きい倍数を用いてこの確率を保ちます。校正、マトリックス、均質性、サンプリングによる分は含みません。正規分布から計算したものです。判定域の両端は規格によります。
report-foreign_book = この規則集はプログラムに付属するものではなく、誰かがファイルから読み込んだものです。出典と値の確かさについての記載は、そのファイルが述べていることです。
report-foreign_books = プログラムに付属しない規則集によっても判定しています：{ $books }。その限度値は、読み込まれたファイルが述べていることです。
report-day_sampled = 試料の採取
report-day_amiss = 互いに合わない日付があります：「{ $later }」は{ $later_day }で、「{ $earlier }」の{ $earlier_day }より前です。どちらかが誤りです。
report-opinions = 各理由の解消方法、次の手順、注意、ほかのルールとの比較、結果を対象としうる項目は、意見及び解釈であり、結果ではありません。
report-standards = ISO/IEC 17025:2017 (7.8)、IEC 62321-1:2013 (4.8)、EN IEC 63000:2018がスクリーニングの報告書に求めることを記載するように作られています。技術文書を構成する文書の1つであって、これだけで技術文書となるものではなく、認定を受けていると主張するものでもありません。
report-settled_by_laboratory = ここに残るものはありません。試験所の結果で決着しています。{ $text }
report-sign_authorised = 承認者（氏名、役職、日付、署名）

## One page

report-page_lots = ロット（悪い順）
report-page_reasons = 主な理由
report-page_next = 次に必要なこと
report-page_by = 担当
report-page_until = 期限
report-page_more_reasons = ほか{ $count }件の理由
report-page_nothing = 保留にするものはありません。
report-page_more_lots = 報告書全文に、ほか{ $count }ロットがあります：受入れ可{ $accept }、保留{ $hold }、受入れ不可{ $not_accept }。
report-page_inspected = 検査したもの
report-page_decided = 決定者（氏名、日付、署名）
report-page_checked = 2人目の確認者（氏名、日付、署名）

## Command line

cli-no_length = 「{ $found }」は報告書の長さではありません。使えるのはone_page、full、annex、allです
