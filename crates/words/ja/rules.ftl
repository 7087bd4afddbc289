# Japanese: rule books and limits: what they say and how they are explained

## Reasons of a disposition

lot-reason-limit_over = { $of }件の測定のうち{ $count }件が、限度値「{ $about }」を超過しています。
    .remedy = ロットを隔離してください。最も悪い結果の試料を試験所に送り、基準試験法（精密分析）で調べてください。これを変えられるのは、その結果だけです。
lot-reason-limit_open = { $of }件の測定のうち{ $count }件が、限度値「{ $about }」において未解決です。
    .remedy = 限度値ごとの説明を見てください：より長い測定、材料の分離、上市日、試験所、またはその問いへの回答。
lot-reason-book_not_loaded = この検査は規則集「{ $about }」を指定していますが、ここにないか、その内容が別の規則集に置き換えられています。
    .remedy = その規則集ファイルを入れるか、ここにあるものを指定するか、置き換えている規則集を外してください。
lot-reason-book_not_in_use = 規則集「{ $about }」は、基準となる日（上市日、なければ検査日）に有効でないか、その日が示されていません。
    .remedy = その日に有効な規則集を入れるか、上市日を入力してください。
lot-reason-book_differs = この検査は規則集「{ $about }」をダイジェストで指定していますが、ここにある同じIDの規則集は別のファイルです。
    .remedy = 意図したファイルを入れるか、何が変わったかを見たうえで、ここにある規則集を指定してください。
summary-limit_over = 限度値{ $about }を超過 { $count }件
summary-limit_open = 限度値{ $about }において未解決 { $count }件
evidence-short-book_not_loaded = 指定された規則集
evidence-short-book_not_in_use = その日に有効な規則集
evidence-short-book_differs = 意図した規則集
act-books = 規則集：{ $value }

## Why a limit is open, or does not apply

reason-answered_no = 人が、この限度値は適用されないと回答しました。
reason-class_not_covered = この限度値は、この材料区分を対象としていません。
reason-outside_validity = この限度値は、上市日には有効ではありません。
reason-placing_date_not_stated = この限度値は特定の上市日に対して有効ですが、上市日が示されていません。
reason-question_open = 適用されるなら限度値超過です。適用されるかどうかは、人が回答しなければなりません。
reason-source_not_seen = 限度値以上です。この限度値は特定の由来の元素だけを数えますが、X線では由来は分かりません。
reason-mixed_materials = 複数の材料を合わせて限度値未満です。そのうちの1つは限度値を上回るかもしれません。

## Rule books explained

rules-edition = 版 { $edition }
rules-days-any = 上市日を問わない
rules-days-from = { $from }以降に上市
rules-days-until = { $until }までに上市
rules-days-both = { $from }から{ $until }までに上市
rules-digest = SHA-256 { $digest }
rules-holds-bands = 判定域{ $count }件
rules-holds-halogens = ハロゲンの限度値{ $count }件
rules-holds-limits = 限度値{ $count }件
rules-holds-exemptions = 適用除外{ $count }件
rules-holds-areas = 面積当たりのクロム(VI)の規則{ $count }件
rules-holds-routes = 基準試験法{ $count }件
confidence-confirmed = 法令または規格の本文で確認済み。
confidence-restated = 二次資料による。法令または規格のこの箇条そのものは未確認。
confidence-memory = 記憶による。頼る前に、法令または規格での確認が必要。
confidence-derived = 行に書かれているとおり、計算または文言から導いたもの。
confidence-own = 規則集の記載：{ $words }。
rules-screening = スクリーニング判定域。sは1シグマ。
rules-halogens = ハロゲンの限度値。sは1シグマ。
rules-cited = { $text }出典：{ $source }、{ $clause }。{ $confidence }
rules-band = { $about }、{ $class }：{ $low }。{ $high }。その間は未確定。
rules-band-none = { $about }、{ $class }：判定対象外。
rules-low = 値 + { $k } sが{ $limit } mg/kg{ $equal ->
        [yes] 以下
       *[no] 未満
    }のとき限度値未満
rules-low-detection = 値がその測定自身の検出下限以下で、かつ検出下限が{ $limit } mg/kg以下のとき限度値未満
rules-high = 値 − { $k } sが{ $limit } mg/kg{ $equal ->
        [yes] 以上の
       *[no] を超える
    }とき限度値超過
rules-high-none = 元素では物質を証明できないため、限度値超過になることはない
rules-within = 値 + { $k } sが{ $limit } mg/kg{ $equal ->
        [yes] 以下
       *[no] 未満
    }のとき限度値内
rules-over = 値 − { $k } sが{ $limit } mg/kg{ $equal ->
        [yes] を超える
       *[no] 以上の
    }とき限度値超過
rules-over-without = { $about }だけの値 − { $k } sが{ $limit } mg/kg{ $equal ->
        [yes] を超える
       *[no] 以上の
    }とき限度値超過
rules-over-never = 測定によって限度値超過になることはない
rules-halogen = { $about }：{ $rule }。
rules-limit = { $id }：{ $about }、{ $basis }に対する割合：{ $rule }。対象：{ $classes }。
rules-species = { $about }は{ $species }の代わりの指標にすぎません。限度値内であれば{ $species }が多すぎることは否定できますが、それを上回っても{ $species }については何も示しません。
rules-source_unknown = この元素は特定の由来のものだけを数えますが、X線では由来は分かりません。限度値以上は未確定です。
rules-mixed = 複数の材料を合わせて限度値内のときは、1つが限度値を上回るかもしれないため、未確定です。
rules-scope = 対象：{ $scope }。
rules-question = 人が回答しなければなりません：{ $question } それまで、超過は未確定とします。
rules-dated = 対象となる製品：{ $days }。
rules-exemption = { $entry }：{ $scope }。{ $bound ->
        [at_most] { $limit } mg/kg以下（この値を含む）。
        [at_least] { $limit } mg/kg以上（この値を含む）。
       *[none] 数値なし。
    } 条文の開始：{ $from ->
        [none] 記載なし
       *[other] { $from }
    }。失効：{ $until ->
        [none] 記載なし
       *[other] { $until }
    }。
rules-exemption-starred = 子どもが口に入れうる一般消費者向けの部品は対象外です。ただし、鉛の放出が十分少ないことを試験が示す場合を除きます。
rules-exemption-not_found = 今も有効か、どの製品カテゴリーについて有効かは確認できませんでした。主張しても保留になります。
rules-area = 金属上のクロム(VI)、面積当たり：{ $below } µg/cm²より下は陰性、{ $above } µg/cm²より上は陽性、その間は判断不能。
rules-route = 未確定の{ $about }は次の方法で調べます：{ $method }、{ $technique }。対象：{ $classes }。出典：{ $source }。{ $confidence }
rules-route-halogens = 塩素または臭素
basis-homogeneous_material = 1つの均質材料
basis-plastic = プラスチック
basis-coating_alone = 皮膜だけ（下にあるものから剝がしたもの。皮膜だけと分かるまでは、未満も未確定）
basis-article = 物品（成形品）またはその一部
basis-packaging_component = 包装またはその構成部品
cli-rules_unknown = 「{ $found }」というIDの規則集はなく、その名前のファイルもありません
