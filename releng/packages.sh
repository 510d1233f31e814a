# SPDX-License-Identifier: EPL-2.0
# Sourced by the scripts beside it, after toolchain.sh: Debian packages that are needed beside the JDK.

# Those of the named packages that are not installed.
missing_packages() {
    local package
    for package in "$@"; do
        # Newer Debian and Ubuntu call the same library libgtk-3-0t64.
        { dpkg-query -W -f '${db:Status-Abbrev}\n' "$package" "${package}t64" 2> /dev/null || true; } | grep '^ii' > /dev/null || printf '%s ' "$package"
    done
}

# Installs what is missing of the named packages, where that is allowed; otherwise says in one sentence how to get it and returns 1.
provide_packages() {
    command -v dpkg-query > /dev/null || return 0
    local missing
    missing=$(missing_packages "$@")
    [ -n "$missing" ] || return 0
    if [ "$(id -u)" -ne 0 ] || ! command -v apt-get > /dev/null; then
        say "These packages are missing: ${missing}(get them as root with: apt-get install $missing)"
        return 1
    fi
    say "Installing $missing..."
    # shellcheck disable=SC2086
    { apt-get update -qq && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing; } < /dev/null > /dev/null || {
        say "These packages could not be installed: $missing"
        return 1
    }
}
