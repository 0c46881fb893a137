#!/bin/sh
# Which words for kinds of foot are safe to use, and who copied whom on the folded one?
cd "$(dirname "$0")/.." || exit
merese concordance "folded foot" "domed foot"
merese witnesses "folded foot"
