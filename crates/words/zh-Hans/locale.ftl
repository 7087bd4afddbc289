# Simplified Chinese: how it writes numbers and dates in text. Decimal sign and date are CLDR's for zh (from memory); thousands
# are not grouped, because a comma is a decimal sign to half the world.

language-name = 简体中文
locale-decimal = {"."}
locale-two_digits = no
locale-day = { $year }年{ $month }月{ $day }日
locale-moment = { $day } { $time }

line-name = 第{ $line }行
report-page_number = 第{ $page }页，共{ $pages }页
sure-confirmed = 已核实
sure-restated = 由二手来源转述
sure-memory = 凭记忆
sure-derived = 推导得出

cli-help_language =
    每个命令还可用：
    --language TAG         其消息的语言：{ $list }
    --report-language TAG  报告的语言，与消息的语言不同时给出（review）
    审查结果和历史文件不论何种语言，字节都相同。
cli-no_language = “{ $found }”不是本程序的语言；可用的有{ $list }
