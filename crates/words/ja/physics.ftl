# Japanese: physics: line overlaps, thickness, composition, stoichiometry

# Composition: what it suggests, why, and what it contradicts. A suggestion is never a decision.
composition-suggests = 組成は{ $what }を示唆しています（{ $numbers }）：{ $because }。
composition-suggests_perhaps = 組成は金属を示唆しており、{ $what }かもしれません（{ $numbers }）：{ $because }。
composition-class-metal = 金属
composition-class-polymer = プラスチック
composition-class-composite = 複合材料
composition-reason-mostly_metal = 金属の合計が{ $metals } %
composition-reason-little_seen = 主成分となりうる元素をすべて測定したのに、検出されたものの合計が{ $sum } %。軽元素は検出できない
composition-reason-much_chlorine = 塩素が主要元素で金属はそうでない。PVCなどの塩素系プラスチックと同様
composition-reason-conductor_in_laminate = 導体とともに、臭素、けい素、カルシウムのうち2つ以上がある。プリント配線板と同様
composition-contests-metals_in_polymer = 示された区分はプラスチックですが、金属の合計が{ $sum } %です（{ $numbers }）。
composition-contests-no_metal_in_metal = 示された区分は金属ですが、主要な金属をすべて測定したのに、どの金属もほとんど見つかりませんでした。
composition-contests-halogen_in_metal = 示された区分は金属ですが、臭素または塩素が、難燃化または塩素化されたプラスチックと同じほどあります。
composition-calibration-pvc_in_polymer_mode = 塩素が主要元素ですが、測定モードは塩素を含まないプラスチック用です。数値が大きくずれているかもしれません。
composition-calibration-metal_in_polymer_mode = 金属をプラスチック用のモードで測定しています。数値が大きくずれているかもしれません。
composition-calibration-metal_in_soil_mode = 金属を土壌または鉱石用のモードで測定しています。数値が大きくずれているかもしれません。
composition-calibration-plastic_in_metal_mode = プラスチックを金属用のモードで測定しています。数値が大きくずれているかもしれません。
composition-calibration-plastic_in_soil_mode = プラスチックを土壌または鉱石用のモードで測定しています。数値が大きくずれているかもしれません。
family-group-steel = 鋼またはその他の鉄合金
family-group-aluminium = アルミニウム合金
family-group-copper = 銅合金
family-group-zinc = 亜鉛合金
family-group-tin = すず合金
family-group-lead = 鉛合金
family-group-nickel = ニッケル合金
family-group-titanium = チタン合金
family-group-magnesium = マグネシウム合金
family-group-precious = 貴金属
family-fits = { $name }の公表された範囲内にあります（{ $source }）。
family-may_be = { $name }かもしれません（{ $source }）。端が3シグマの範囲内にあるか、測定されていないものがあります。
family-near = 最も近い系統は{ $name }です（{ $source }）。{ $element }が{ $by } %外れています。
family-also = 同じくあり得るもの：{ $names }。
next-state_class_suggested = 材料区分を指定してください。組成は{ $what }を示唆しています。
class-from-contested = 記載があるが、測定されたものと矛盾
lot-reason-class_contested = { $of }件の測定のうち{ $count }件で、測定されたものが、示された区分とはっきり矛盾しています。すべての区分で判定し、最も悪い結果を採りました。
    .remedy = 部品と、ビームが当たったものを見てください。区分を直すか、材料を分けるか、測定し直してください。
lot-reason-calibration_doubtful = { $of }件の測定のうち{ $count }件が、材料に合わない測定モードで行われています。数値が大きくずれているかもしれません。
    .remedy = 材料に合うモードで測定し直してください。
evidence-short-class_contested = 測定されたものと矛盾する区分
evidence-short-calibration_doubtful = 合うモードでの測定

## Cautions beside an outcome

doubt-line_overlap = { $partner }（{ $partner_line }、{ $gap } eVの差）が{ $about }の{ $line }線に重なっています。補正しなければ、{ $about }が{ $apparent } mg/kgあるように見えます（{ $basis }）。
doubt-other_line = { $about }を{ $line }線で測定した場合：{ $partner }（{ $partner_line }、{ $gap } eVの差）が重なり、{ $about }が{ $apparent } mg/kgあるように見えます（{ $basis }）。
doubt-sum_peak = 1つと数えられた{ $partner }の2つのパルス（{ $partner_line }、{ $gap } eVの差）が、{ $about }の{ $line }線に重なっています。補正しなければ、{ $about }が{ $apparent } mg/kgあるように見えます（{ $basis }）。
doubt-escape_peak = { $partner }のエスケープピーク（{ $partner_line }、{ $gap } eVの差）が、{ $about }の{ $line }線に重なっています。補正しなければ、{ $about }が{ $apparent } mg/kgあるように見えます（{ $basis }）。
doubt-tube_line = X線管自身の{ $partner }線（{ $partner_line }、{ $gap } eVの差）が、{ $about }の{ $line }線に重なっています。補正しなければ、{ $about }が{ $apparent } mg/kgあるように見えることがあります（{ $basis }）。
doubt-thin_piece = 試料が薄く、厚いものに比べて信号の{ $percent } %が欠けているため、{ $about }は実際より低く出ます。
doubt-strong_below = 分析装置はこれを補正していますが、その10分の1が残っていれば（仮定：通例であり、出典なし）、値は端を超えるかもしれません。このBLでは決着しません。重なりのない線で測定するか、基準試験法を用いてください。
doubt-strong_over = これがなければ、値は限度値超過になりません。受入れを拒否する前に、試験所に確認してもらってください。

lot-reason-overlap_unresolved = { $about }は、{ $of }件の測定のうち{ $count }件で限度値未満ですが、別の元素の強い線がその線に重なっており、補正で残ったかもしれない分が端に達します。
    .remedy = 重なりのない線で測定するか、試料を試験所に送り、基準試験法で調べてください。
lot-reason-over_may_be_overlap = { $about }は、{ $of }件の測定のうち{ $count }件で限度値超過ですが、その線に重なる別の元素の強い線によるものにすぎないかもしれません。
    .remedy = ロットを隔離し、拒否する前に、試験所に基準試験法で確認してもらってください。
evidence-short-overlap_unresolved = 重なりのない線
evidence-short-over_may_be_overlap = 試験所の結果

## What an element allows at most

bound-hexavalent = クロムがすべて六価であるとしても、Cr(VI)は最大{ $most } mg/kgです。
bound-brominated = 臭素がすべて臭素1個の同族体であるとしても、PBDEはどれも最大{ $pbde } mg/kg、PBBはどれも最大{ $pbb } mg/kgです。decaBDEであるとすれば、最大{ $deca } mg/kgです。TBBPAやDBDPEなど、指令が規制していない難燃剤に由来することも同じようにあり得ます。
bound-pops = この結果だけでは、規則 (EU) 2019/1021（(EU) 2025/1482により改正。二次資料による）のPBDEの限度値{ $limit } mg/kgを守っているかどうかは分かりません。それは別の法令です。
