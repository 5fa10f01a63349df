# Sourced by the scripts beside it: finds, and where it may installs, what they need. Changes nothing but the calling process.

cache=${XDG_CACHE_HOME:-${HOME:+$HOME/.cache}}
cache=${cache:-${TMPDIR:-/tmp}/cache-$(id -u)}/flexwright
MAVEN_VERSION=3.9.11

say() { printf '%s\n' "$*" >&2; }
fail() { say "$*"; exit 2; }

may_install() { [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; }

# install NAME...: installs the first of the packages that the distribution has
install() {
    local name list
    for list in known updated; do
        if [ $list = updated ]; then
            apt-get update -qq >/dev/null 2>&1 || return 1
        fi
        for name; do
            if apt-cache show "$name" >/dev/null 2>&1; then
                say "Installing $name."
                DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends "$name" >/dev/null 2>&1 && return 0
            fi
        done
    done
    return 1
}

# java_release HOME: the feature release of the JDK there, empty where there is none
java_release() {
    [ -x "$1/bin/javac" ] || return 0
    if [ -r "$1/release" ]; then
        sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release"
    else
        "$1/bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p'
    fi
}

# The first JDK of release 21 or newer: JAVA_HOME, the path, then the installed ones
search_jdk() {
    local on_path home release
    on_path=$(command -v javac || true)
    [ -z "$on_path" ] || on_path=$(dirname "$(dirname "$(readlink -f "$on_path")")")
    for home in "${JAVA_HOME:-}" "$on_path" /usr/lib/jvm/*; do
        [ -n "$home" ] || continue
        release=$(java_release "$home")
        if [ "${release:-0}" -ge 21 ]; then
            jdk=$home
            jdk_release=$release
            return 0
        fi
    done
    return 1
}

need_jdk() {
    search_jdk && return
    may_install && install openjdk-21-jdk-headless openjdk-25-jdk-headless && search_jdk && return
    fail "Flexwright needs a JDK of release 21 or newer: install one (for example the package openjdk-21-jdk-headless, or a download of your choice) and point JAVA_HOME at it."
}

# Whether a Maven can run the build: 3.9 or newer, and not one of the distribution's, whose own choice of parts
# keeps the build's extension from loading (seen with 3.9.9 of Debian 13)
maven_fits() {
    local told version
    told=$(JAVA_HOME=$jdk "$1" -v 2>/dev/null)
    version=$(sed -n 's/.*Apache Maven \([0-9.]*\).*/\1/p' <<<"$told" | head -n 1)
    case $told in *'Maven home: /usr/share/'*) return 1 ;; esac
    case $version in 3.9.*|3.[1-9][0-9].*|[4-9].*) return 0 ;; *) return 1 ;; esac
}

need_maven() {
    local system fetched=$cache/apache-maven-$MAVEN_VERSION
    maven=$fetched/bin/mvn
    [ -x "$maven" ] && return
    system=$(command -v mvn || true)
    if [ -z "$system" ]; then
        may_install && install maven || fail "Flexwright is built with Maven: install it (for example the package maven)."
        system=$(command -v mvn)
    fi
    maven=$system
    maven_fits "$maven" && return
    say "Fetching Maven $MAVEN_VERSION, as the installed one cannot run this build."
    mkdir -p "$cache"
    # not from the top folder: its Maven extension does not run in an old Maven
    (cd "$cache" && JAVA_HOME=$jdk "$system" -B -q org.apache.maven.plugins:maven-dependency-plugin:3.6.0:copy \
        -Dartifact=org.apache.maven:apache-maven:$MAVEN_VERSION:tar.gz:bin -DoutputDirectory="$cache") >"$cache/maven.log" 2>&1 \
        && tar xzf "$cache/apache-maven-$MAVEN_VERSION-bin.tar.gz" -C "$cache" \
        || fail "Maven $MAVEN_VERSION could not be fetched (see $cache/maven.log): install a Maven of 3.9 or newer."
    rm -f "$cache/apache-maven-$MAVEN_VERSION-bin.tar.gz"
    maven=$fetched/bin/mvn
}

has_library() {
    local file
    for file in /usr/lib/*/"$1" /usr/lib/"$1" /usr/lib64/"$1"; do
        [ ! -e "$file" ] || return 0
    done
    return 1
}

need_gtk() {
    has_library libgtk-3.so.0 && return
    may_install && install libgtk-3-0t64 libgtk-3-0 && return
    fail "The window needs GTK 3: install the package libgtk-3-0t64 (libgtk-3-0 on older systems)."
}

need_xvfb() {
    command -v Xvfb >/dev/null && return
    may_install && install xvfb && return
    fail "The tests of the window need a display of their own: install the package xvfb."
}

# A display of one's own, so that windows open without one and disturb nobody
start_display() {
    local number=$top/target/display left
    rm -f "$number"
    Xvfb -displayfd 3 -screen 0 1600x1000x24 -nolisten tcp 3>"$number" >/dev/null 2>&1 &
    display_server=$!
    trap 'kill $display_server 2>/dev/null' EXIT
    for left in $(seq 100 -1 0); do
        [ -s "$number" ] && break
        [ "$left" -gt 0 ] || fail "The display for the windows did not start: try Xvfb by hand."
        sleep 0.1
    done
    DISPLAY=:$(cat "$number")
    export DISPLAY
    unset WAYLAND_DISPLAY
    export GDK_BACKEND=x11 NO_AT_BRIDGE=1
}

# Where the build puts the product for this machine
product_folder() {
    local arch
    case $(uname -m) in aarch64|arm64) arch=aarch64 ;; *) arch=x86_64 ;; esac
    echo "$top/releng/products/target/products/flexwright/linux/gtk/$arch/flexwright"
}

# Removes what earlier builds made: classes, reports and products of deleted sources must not come back
clean_output() {
    rm -rf "$top"/bundles/*/target "$top"/features/*/target "$top"/releng/{acceptance,benchmarks,check,codegen,products,ui-harness}/target "$top"/releng/fixtures/*/target
}

# run_maven LOG ARGUMENT...: runs Maven from the top folder, all it prints goes to the log
run_maven() {
    local log=$1 options=${MAVEN_OPTS:-}
    shift
    [ "$jdk_release" -lt 24 ] || options="--sun-misc-unsafe-memory-access=allow --enable-native-access=ALL-UNNAMED $options"
    (cd "$top" && JAVA_HOME=$jdk MAVEN_OPTS=$options "$maven" -B --no-transfer-progress "$@") >"$log" 2>&1 </dev/null
}

# What a failed Maven run said, without failed tests (they are listed apart) and the hints that it ends with
maven_errors() {
    sed -n '/^\[ERROR\]/p' "$1" | grep -v -e 'osgi.platform' -e '^\[ERROR\] *$' -e 're-run Maven' -e 'Re-run Maven' -e 'Help 1' -e 'For more information' \
        -e 'Tests run:' -e 'FAILURE!' -e 'ERROR!' -e 'There are test failures' -e '^\[ERROR\] \(Failures\|Errors\): ' -e '^\[ERROR\]   [A-Za-z]*Test[.:]' \
        | head -n 40 >&2
}
