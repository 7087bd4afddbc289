# Japanese: how it writes numbers and dates in text. Decimal sign and date are CLDR's for ja (from memory); thousands are not
# grouped, because a comma is a decimal sign to half the world.

language-name = 日本語
locale-decimal = {"."}
locale-two_digits = no
locale-day = { $year }年{ $month }月{ $day }日
locale-moment = { $day } { $time }

line-name = { $line }行目
report-page_number = { $page } / { $pages }ページ
sure-confirmed = 確認済み
sure-restated = 二次資料による
sure-memory = 記憶による
sure-derived = 導出による

cli-help_language =
    どのコマンドでも使えるもの：
    --language TAG         メッセージの言語：{ $list }
    --report-language TAG  報告書の言語（それと異なる場合。review）
    所見と履歴は、どの言語でも同じバイト列になる。
cli-no_language = 「{ $found }」はこのプログラムの言語ではありません。使えるのは{ $list }です
