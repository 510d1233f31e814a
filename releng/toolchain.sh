# SPDX-License-Identifier: EPL-2.0
# Sourced by the scripts beside it: finds a JDK that is new enough, and a Maven that Tycho accepts.

readonly JDK_LEAST=21
readonly MAVEN_VERSION=3.9.16

say() { printf '%s\n' "$*" >&2; }
fail() { say "$@"; exit 70; }

# The major version of the JDK in a folder, from its own release file (no JVM is started for it); nothing when it is none.
jdk_major() {
    [ -x "$1/bin/javac" ] && [ -r "$1/release" ] || return 0
    sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release"
}

# Sets JAVA_HOME to the first JDK that is new enough: JAVA_HOME, the one on the path, then the usual folder of JVMs, newest first.
find_jdk() {
    local on_path='' candidate major best='' best_major=0
    on_path=$(command -v javac || true)
    [ -z "$on_path" ] || on_path=$(dirname "$(dirname "$(readlink -f "$on_path")")")
    for candidate in "${JAVA_HOME:-}" "$on_path"; do
        [ -n "$candidate" ] || continue
        major=$(jdk_major "$candidate")
        if [ "${major:-0}" -ge "$JDK_LEAST" ]; then
            export JAVA_HOME=$candidate
            return
        fi
    done
    for candidate in /usr/lib/jvm/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
        major=$(jdk_major "$candidate")
        if [ "${major:-0}" -ge "$JDK_LEAST" ] && [ "$major" -gt "$best_major" ]; then
            best=$candidate
            best_major=$major
        fi
    done
    [ -n "$best" ] || fail "Garboard needs a JDK of version $JDK_LEAST or newer: install one, or set JAVA_HOME to one."
    export JAVA_HOME=$best
}

# Sets MAVEN to the pinned Maven, brought through the mvn that is there when it is not in the cache yet.
find_maven() {
    local cache=${XDG_CACHE_HOME:-${HOME:-/tmp}/.cache}/garboard fresh
    MAVEN=$cache/apache-maven-$MAVEN_VERSION/bin/mvn
    [ ! -x "$MAVEN" ] || return 0
    command -v mvn > /dev/null || fail "Garboard is built with Maven: install any version of it (Debian: apt-get install maven); the right one is fetched through it."
    mkdir -p "$cache"
    fresh=$(mktemp -d "$cache/fetch.XXXXXX")
    say "Fetching Maven $MAVEN_VERSION (once) ..."
    (cd "$fresh" && mvn -B -q org.apache.maven.plugins:maven-dependency-plugin:3.8.1:unpack \
        -Dartifact="org.apache.maven:apache-maven:$MAVEN_VERSION:tar.gz:bin" -DoutputDirectory="$fresh" < /dev/null >&2) \
        || { rm -rf "$fresh"; fail "Maven $MAVEN_VERSION could not be fetched: Maven Central must be within reach the first time."; }
    # Another run may have been quicker; then its copy is as good.
    mv -T "$fresh/apache-maven-$MAVEN_VERSION" "$cache/apache-maven-$MAVEN_VERSION" 2> /dev/null || [ -d "$cache/apache-maven-$MAVEN_VERSION" ]
    rm -rf "$fresh"
    chmod +x "$MAVEN"
}
