# Japanese: exemptions and claims

## What a person says

act-claim = { $substance }について適用除外{ $entry }を主張。裏付け：{ $evidence ->
        [none] 記載なし
       *[other] { $evidence }
    }。2人目：{ $second ->
        [none] なし
       *[other] { $second }
    }
act-renewal = { $entry }の更新：{ $state ->
        [pending] 審査中
        [refused] 却下
       *[not_filed] 申請なし
    }。出典：{ $source ->
        [none] 記載なし
       *[other] { $source }
    }。{ $state ->
        [not_filed] 日付
       *[other] 申請日
    }：{ $date ->
        [none] 記載なし
       *[other] { $date }
    }
act-mouthing = 子どもが口に入れる可能性は？ { $value ->
        [cannot] ない、または一般消費者向けではない
        [can] ある
       *[release_shown] あるが、放出が十分少ないことを試験が示している
    }
act-cr6_area = 面積当たりのクロム(VI)：{ $area }。試験所：{ $laboratory ->
        [none] 記載なし
       *[other] { $laboratory }
    }。報告書：{ $report ->
        [none] 記載なし
       *[other] { $report }
    }

## Reasons of a disposition

lot-reason-claim_covers = { $about }は、{ $of }件の測定のうち{ $count }件で、裏付けと2人目のイニシャルを伴う適用除外{ $entry }の主張の対象です。
    .remedy = 裏付けを報告書とともに保管してください。適用除外の失効日を見てください。
lot-reason-claim_open = { $about }について適用除外{ $entry }が主張されていますが、未解決の点があります：{ $why }。
    .remedy = 問いに回答してください。それまで、この主張によりロットは保留です。
lot-reason-claim_exceeded = { $about }について適用除外{ $entry }が主張されていますが、測定はその数値からkシグマのガードバンドを超えて外れています。
    .remedy = 適用除外はこれを対象としません。ロットを隔離するか、含有量を基準試験法で確認してもらってください。
lot-reason-claim_expired = { $about }について適用除外{ $entry }が主張されていますが、製品の上市前に失効しており、更新は却下されたか、申請されていません。
    .remedy = 適用除外はこれを対象としません。ロットを隔離してください。
lot-reason-claim_not_covered = { $about }について適用除外{ $entry }が主張されていますが、これを対象としません：{ $why }。
    .remedy = 主張を取り下げるか、合う項目を主張してください。測定の結果はそのまま残ります。
lot-reason-cr6_negative = 試験所の報告書により、面積当たりのクロム(VI)は陰性です。この皮膜について、未解決だったクロムは決着しました。
    .remedy = その報告書をこの報告書とともに保管してください。
lot-reason-cr6_inconclusive = 面積当たりのクロム(VI)は、陰性とも陽性ともいえません（0.10～0.13 µg/cm²、またはどちらも示さない限界値）。
    .remedy = IEC 62321-7-1により、さらに多くの試験片を試験してもらってください。
lot-reason-cr6_present = 面積当たりのクロム(VI)は陽性です。皮膜中に存在します。層の0.1 %を超えるかどうかは試験所に尋ねるべきことです。この試験からmg/kgは得られません。
    .remedy = ロットを隔離してください。試験所に層の含有量を尋ねるか、供給者にクロム(VI)を含まない皮膜を求めてください。
lot-reason-cr6_no_report = 面積当たりのクロム(VI)は陰性とされていますが、試験所またはその報告書の記載がありません。
    .remedy = 試験所とその報告書を記載してください。
lot-reason-cr6_other_class = 金属でない材料に、面積当たりのクロム(VI)が示されています。面積当たりの試験（IEC 62321-7-1）は金属上の皮膜用なので、ここでは何も決着しません。
    .remedy = プラスチックと電子部品にはIEC 62321-7-2が必要です。

summary-claim_covers = { $about }が主張された適用除外の対象 { $count }件
summary-claim_exceeded = { $about }が主張された適用除外の数値を外れる { $count }件
summary-claim_expired = { $about }の適用除外が失効 { $count }件
summary-claim_not_covered = { $about }が主張された適用除外の対象外 { $count }件
summary-cr6_negative = 面積当たりのクロム(VI)が陰性
summary-cr6_inconclusive = 面積当たりのクロム(VI)が判断不能
summary-cr6_present = 面積当たりのクロム(VI)が存在
evidence-short-claim_open = 主張された適用除外への回答
evidence-short-cr6_no_report = クロム(VI)についての試験所の報告書
evidence-short-cr6_other_class = 金属でないものに示された面積当たりのクロム(VI)

## What became of a claim

claim-covered = 対象
claim-open = 未解決
claim-exceeded = 数値を外れる
claim-expired = 失効
claim-not_covered = 対象外
claim-not_needed = 不要：限度値超過または未確定の測定なし

number-within = 適用除外に上限値があり、測定値はkシグマを加えてもその上限以内
number-within_minimum = 適用除外に下限値があり、測定値はkシグマを差し引いてもその下限以上
number-no_number = 適用除外に上限値の定めがないため、測定値が超える上限はない
number-open = 適用除外の数値が、ある測定のkシグマの範囲内にある
number-not_stated = 不確かさの付いた数値でない測定がある
number-exceeded = 適用除外の数値からkシグマを超えて外れている

direction-at_most = { $limit } mg/kg以下
direction-at_least = { $limit } mg/kg以上
direction-none = 数値なし
claims-guard = 適用除外の限度値についてのスクリーニング判定域は公表されておらず、ここで独自に設けることもしません。限度値の両側のガードバンドk = { $k }シグマで決めます。

question-status_not_found = この項目が今も有効かどうかは、確認できませんでした
question-category_not_stated = どの製品カテゴリーですか（指令 2011/65/EU）
question-category_unclear = この項目はカテゴリーの一方だけを対象とします。産業用（9i）かその他（9o）か、体外診断用（8ivd）かその他の医療用（8o）か、どちらですか
question-entry_categories_not_found = この項目がどの製品カテゴリーを対象とするかは、確認できませんでした
question-placing_date_not_stated = 製品の上市日はいつですか
question-earlier_text = この項目の条文が発効する前に上市されています。以前の条文が適用されますが、読み込まれた規則集にはありません
question-day_of_expiry = ちょうど失効日に上市されており、その日を含むかどうかは法令に書かれていません
question-renewal_unknown = 失効日の後に上市されています。更新は審査中ですか
question-renewal_not_sourced = 更新は審査中とされています。それはどこに書かれ、申請日はいつですか
question-renewal_after_review = 更新の申請日がレビュー日より後とされているか、レビュー日が示されていません。どの日付が正しいですか
question-renewal_late = 更新の申請が、失効日の18か月前という期限（指令2011/65/EU第5条(5)）より遅れています。それでもこの項目は有効ですか
question-mouthing_not_answered = 子どもがこの部品、またはそこから外れる部品を口に入れる可能性はありますか
question-class_not_known = 材料区分は何ですか
question-layer_not_resolved = 層とその下にあるものが平均されており、材料そのものの測定ではありません。分けてください
question-not_homogeneous = 複合材料です。1つの均質材料の測定ではありません。分けてください
question-group_not_known = 何の合金（またはガラス、セラミック）ですか。測定からは分からず、主張にも書かれていません
question-number_not_stated = 不確かさの付いた数値でない測定があります
question-bound_within_sigma = この項目の数値が、ある測定のkシグマの範囲内にあります。長く測定するか、確認してもらってください
question-evidence_missing = この項目が当てはまることを、どの文書が示していますか
question-second_missing = 異なる2人のイニシャルがそろっていません

refusal-entry_not_in_book = 読み込まれた規則集に、この項目はありません
refusal-entry_near = 読み込まれた規則集に、この書き方の項目はありません。最も近いのは{ $entry }です
refusal-other_substance = この項目は別の物質についてのものです
refusal-other_class = この項目は別の材料区分についてのものです
refusal-other_group = この項目は別の合金についてのものか、測定と主張とで合金が食い違っています
refusal-other_category = この項目は、製品のカテゴリーを対象としていません
refusal-child_could_mouth = この項目は、子どもが口に入れうるものを対象としていません

group-steel = 鋼
group-aluminium = アルミニウム
group-copper = 銅合金
group-zinc = 亜鉛
group-tin = すず
group-lead = 鉛
group-nickel = ニッケル
group-titanium = チタン
group-magnesium = マグネシウム
group-precious = 貴金属
group-glass_ceramic = ガラスまたはセラミック
group-any = 材料を問わない

renewal-pending = 更新審査中
renewal-refused = 更新却下
renewal-not_filed = 更新申請なし
renewal-unknown = 更新の状況不明

cr6-negative = 陰性：クロム(VI)は見つからず
cr6-inconclusive = 判断不能
cr6-positive = 陽性：クロム(VI)が存在

expiries-title = 失効する適用除外と、その時期
expiries-none = 主張された、または対象としうる適用除外に、失効日のあるものはここにありません。
expiry-claimed = { $day }：{ $about }についての適用除外{ $entry }が失効（{ $renewal }）。{ $count }材料について主張されています：{ $names }。
expiry-candidate = { $day }：{ $about }についての適用除外{ $entry }が失効（{ $renewal }）。主張されていませんが、{ $count }材料について主張しうるものです：{ $names }。
expiry-undated = { $day }：{ $about }についての適用除外{ $entry }が失効（{ $renewal }）。主張されていません。主張できるかどうかは上市日によりますが、上市日が示されていません。対象は{ $count }材料です：{ $names }。
