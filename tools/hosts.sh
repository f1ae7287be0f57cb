#!/usr/bin/env bash
# The FreeCADs that this machine does not have itself, each in a folder of its own.
#
#   tools/hosts.sh build [HOST…]      make what is missing of them (remove a folder to renew it)
#   tools/hosts.sh list               their names and folders
#   tools/hosts.sh run HOST CMD…      run a command in one, with the checkout as /src
#   tools/hosts.sh pytest [HOST] …    run pytest in one, or one after another in all
#
# HOST is bookworm (FreeCAD 0.20), trixie (1.0) or forky (1.1); the native one is a host
# too, and runs without a folder. The checkout is read-only in there except for build/.
# The folders live in $CLOSETBENCH_HOSTS (default /var/cache/closetbench-hosts), so that
# a fresh clone finds them made. Mirror, keys and proxies are those of the machine's apt.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/common.sh"

NATIVE=$(. /etc/os-release && echo "${VERSION_CODENAME:-}")
SUITES=(bookworm trixie forky)
PACKAGES=("${RUN_PACKAGES[@]}" "${TEST_PACKAGES[@]}" "${SCREEN_PACKAGES[@]}")
# An old or a frozen mirror serves release files whose date has passed.
APT=(-o Acquire::Check-Valid-Until=false -o Acquire::Check-Date=false)

others() { printf '%s\n' "${SUITES[@]}" | grep -vx "$NATIVE"; }

mirror() {
    apt-get indextargets --format '$(RELEASE) $(COMPONENT) $(REPO_URI)' 'Created-By: Packages' |
        awk -v native="$NATIVE" '$2 == "main" && $1 == native { print $3; exit }'
}

# The keyrings that the machine's sources name, else Debian's own.
keyrings() {
    {
        grep -rhoiE 'signed-by[:=] *[^] ]+\.gpg' /etc/apt/sources.list /etc/apt/sources.list.d \
            2>/dev/null | sed -E 's/^[^:=]*[:=] *//' || true
        echo /usr/share/keyrings/debian-archive-keyring.gpg
    } | sort -u | while read -r ring; do
        if [ -r "$ring" ]; then echo "$ring"; fi
    done
}

# Bring name resolution, certificates, proxies and the mirror of this machine into DIR.
configure() {
    local dir=$1 suite=$2 file
    for file in /etc/resolv.conf /etc/hosts; do
        if [ -r "$file" ]; then cat "$file" >"$dir$file"; fi
    done
    if [ -r /etc/ssl/certs/ca-certificates.crt ]; then
        mkdir -p "$dir/etc/ssl/certs"
        cp /etc/ssl/certs/ca-certificates.crt "$dir/etc/ssl/certs/"
    fi
    mkdir -p "$dir/etc/apt/keyrings"
    keyrings | xargs -r cat >"$dir/etc/apt/keyrings/machine.gpg"
    echo "deb [signed-by=/etc/apt/keyrings/machine.gpg] $(mirror) $suite main" \
        >"$dir/etc/apt/sources.list"
    apt-config dump | grep -E '^Acquire::(https?|Retries|ForceIPv[46]|Languages)\b' \
        >"$dir/etc/apt/apt.conf.d/90machine" || true
    # Nothing in there outlives a test run: no need to wait for the disk, or to start services.
    echo force-unsafe-io >"$dir/etc/dpkg/dpkg.cfg.d/unsafe-io"
    printf '#!/bin/sh\nexit 101\n' >"$dir/usr/sbin/policy-rc.d"
    chmod 755 "$dir/usr/sbin/policy-rc.d"
}

# Run a command inside DIR. The mounts are made in a mount namespace of their own, and
# undone by the kernel when its last process ends, however that comes about: nothing can
# be left mounted for a later `rm` of DIR to walk into.
inside() {
    local dir=$1
    shift
    mkdir -p "$BUILD" "$dir/src"
    env -u XDG_RUNTIME_DIR -u DISPLAY HOME=/root PATH=/usr/sbin:/usr/bin:/sbin:/bin \
        PWD=/ BUILD="$BUILD" CLOSETBENCH_BUILD=/src/build \
        unshare --mount --propagation private bash -euc '
        dir=$1 root=$2
        shift 2
        mount -t proc proc "$dir/proc" 2>/dev/null || mount --rbind /proc "$dir/proc"
        mount --rbind /dev "$dir/dev"
        mount --bind "$root" "$dir/src"
        mkdir -p "$dir/src/build"
        mount -o remount,bind,ro "$dir/src"
        mount --bind "$BUILD" "$dir/src/build"
        exec chroot "$dir" "$@"' bash "$dir" "$ROOT" "$@"
}

build_one() {
    local suite=$1 dir=$HOSTS/$1 new=$HOSTS/$1.new script=()
    if [ ! -d "$dir" ]; then
        say "making a $suite host in $dir"
        rm -rf "$new"
        mkdir -p "$new"
        # debootstrap of Debian 12 does not know later names; all of them are built like sid.
        [ -e "/usr/share/debootstrap/scripts/$suite" ] ||
            script=(/usr/share/debootstrap/scripts/sid)
        local rings
        rings=$(mktemp)
        keyrings | xargs -r cat >"$rings"
        quietly debootstrap --variant=minbase --keyring="$rings" "$suite" "$new" "$(mirror)" \
            "${script[@]}"
        rm -f "$rings"
        configure "$new" "$suite"
        mv "$new" "$dir"
    fi
    local missing=() package
    for package in "${PACKAGES[@]}"; do
        chroot "$dir" dpkg-query -W -f '${db:Status-Status}\n' "$package" 2>/dev/null |
            grep -qx installed || missing+=("$package")
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    say "installing in $suite: ${missing[*]}"
    configure "$dir" "$suite"
    quietly inside "$dir" apt-get "${APT[@]}" update
    quietly inside "$dir" apt-get "${APT[@]}" install -y --no-install-recommends "${missing[@]}"
    chroot "$dir" apt-get clean
}

build() {
    [ "$(id -u)" = 0 ] || die "tools/hosts.sh: building hosts takes root."
    "$ROOT/tools/setup.sh" hosts
    [ -n "$(mirror)" ] || die "tools/hosts.sh: no Debian mirror for '$NATIVE' in apt's sources."
    mkdir -p "$HOSTS"
    local suite
    for suite in ${*:-$(others)}; do
        (
            # Two checkouts may want the same folder at the same time.
            flock 9
            build_one "$suite" 9>&-
        ) 9>"$HOSTS/.$suite.lock"
    done
}

run() {
    local suite=$1
    shift
    if [ "$suite" = "$NATIVE" ]; then
        (cd "$ROOT" && CLOSETBENCH_BUILD=$BUILD "$@")
    else
        [ -d "$HOSTS/$suite" ] || die "tools/hosts.sh: no host '$suite': make hosts"
        inside "$HOSTS/$suite" bash -c 'cd /src && exec "$@"' bash "$@"
    fi
}

run_pytest() {
    local suites status=0 suite
    suites=$(others)
    if [ $# -gt 0 ] && printf '%s\n' "${SUITES[@]}" | grep -qx -- "$1"; then
        suites=$1
        shift
    fi
    for suite in $suites; do
        say "tests on $suite"
        run "$suite" env CLOSETBENCH_REQUIRE_FREECAD=1 \
            "$PYTHON" -m pytest -o cache_dir="build/pytest-$suite" "$@" </dev/null || status=1
    done
    return "$status"
}

command=${1:-}
[ $# -eq 0 ] || shift
case $command in
    build) build "$@" ;;
    list) for suite in $(others); do echo "$suite $HOSTS/$suite"; done ;;
    run) [ $# -ge 2 ] || die "usage: tools/hosts.sh run HOST COMMAND…"; run "$@" ;;
    pytest) run_pytest "$@" ;;
    *) die "usage: tools/hosts.sh build [HOST…] | list | run HOST COMMAND… | pytest [HOST] [OPTION…]" ;;
esac
