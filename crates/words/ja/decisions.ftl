# Japanese: decisions: sigma, repeats, probabilities, decision rules, time, next steps and working

## Repeats of one spot

pooled-from-stated = 測定に記載された不確かさを、件数の平方根で割ったもの
pooled-from-scatter = 測定のばらつきを、件数の平方根で割ったもの
pooled-from-scatter_of_few = { $n }件の測定のばらつきを、件数の平方根で割ったもの。件数が少ないため、{ $k }シグマの代わりに{ $t }を用いる
pooled-disagree = この箇所の{ $n }件の測定は、不確かさを超えて食い違っています（確率{ $p }）。平均ではなく、最も悪いものを採ります。
pooled-agree = この箇所の{ $n }件の測定は、不確かさの範囲内で合っています（確率{ $p }）。
pooled-not_asked = この箇所の{ $n }件の測定をまとめました。互いに合うかどうかは調べられません。
pooled-largest_limit = この箇所の{ $n }件の測定は、すべて不検出です。最も大きい検出下限を採ります。
pooled-mixed = この箇所の{ $n }件の測定は、検出されたものと不検出のものが混ざっています。それぞれ単独で見て、最も悪いものを採ります。
pooled-sigma = 平均の1シグマ：{ $from }。
pooled-outlier = 測定（{ $which }）は、全体の平均から標準偏差の{ $g }倍離れています。偶然に超えるのが20回に1回となる{ $critical }を上回ります（Grubbs）。記録には残します。

## Spots beside each other

spots-differ = { $n }箇所の差は、偶然で説明できる範囲を超えています（確率{ $p }）。最も悪い箇所を採ります。
spots-no-difference = { $n }箇所の間に差は見られませんでした（確率{ $p }）。同じであることの証明ではありません。最も悪い箇所を採ります。

## Probability within a limit, and decision rules side by side

probability-about = { $percent } %
probability-more_than = { $percent } %より大きい
probability-less_than = { $percent } %より小さい
conformity-within = 真の値が限度値{ $limit } mg/kg以内にある確率：{ $chance }。
conformity-beyond = 限度値を超えている確率：{ $chance }。
conformity-repeatability_only = 含むのは繰返し性だけです。校正、マトリックス、サンプリングによる分は含みません。
conformity-risk = この値について、この判定が誤っている確率：{ $chance }。
rule-simple_acceptance = 単純受入れ（限度値まで）
rule-guarded_acceptance = ガードバンド付き受入れ（限度値から{ $k }シグマを引いた値まで）
rule-non_binary = 条件付き判定あり（限度値の両側に{ $k }シグマ）
statement-pass = 合格
statement-conditional_pass = 条件付き合格
statement-conditional_fail = 条件付き不合格
statement-fail = 不合格

rule-bands = ここで用いるスクリーニング判定域

## Measuring longer

longer-seconds = 約{ $even }秒で五分五分、約{ $surely }秒で90 %の確率で判定がつきます（推定）。
longer-seconds_even_only = 約{ $even }秒で、五分五分の確率で判定がつきます。90 %の確率には{ $cap }秒を超える時間が必要です（推定）。
longer-never-inside_edges = どれだけ長く測定しても判定はつきません。値そのものが、このルールで未確定となる範囲にあります。
longer-never-constant_part = どれだけ長く測定しても判定はつきません。不確かさのうち、時間で減らない部分だけで大きすぎます。
longer-never-too_long = 1箇所に{ $cap }秒を超える時間が必要です。
longer-never-not_known = どれだけ長ければ足りるかは分かりません。測定時間または不確かさが不明です。
longer-plan = { $readings ->
    [1] 1件の測定（{ $longest }秒）
   *[other] { $readings }件の測定（それぞれ{ $longest }秒以下、合計{ $total }秒）
}で、未解決の結果{ $of }件のうち{ $settles }件が、それぞれ90 %の確率で決着します（推定）。
longer-plan-none = 長く測定しても、未解決の結果{ $of }件のうち決着するものはありません。
longer-plan_even = { $readings ->
    [1] 1件の測定（{ $longest }秒）
   *[other] { $readings }件の測定（それぞれ{ $longest }秒以下、合計{ $total }秒）
}で、未解決の結果{ $of }件のうち{ $settles }件が、それぞれ五分五分の確率で決着します（推定）。
longer-plan-nothing_open = 未確定または判定能力不足の結果がないため、長く測定して決着するものはありません。
