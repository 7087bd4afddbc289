# shellcheck shell=bash
# Sourced by each script from the top of the project.
. scripts/lib/say.sh
. scripts/lib/packages.sh
. scripts/lib/rust.sh
. scripts/lib/node.sh
. scripts/lib/browsers.sh
. scripts/lib/page.sh
