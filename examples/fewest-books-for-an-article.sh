#!/bin/sh
# The fewest sources that picture the stems and feet of an article, without the sale catalogue.
cd "$(dirname "$0")/.." || exit
merese fewest "folded foot" "opaque twist" "air twist" "baluster stem" --pictured --without pell-dunmarsh-2003
