# SPDX-License-Identifier: EPL-2.0
# Sourced by the scripts beside it, after toolchain.sh: builds the console product when it is due, and runs it.

readonly REPOSITORY=$(dirname "$releng")
readonly PRODUCT=$releng/garboard.console.product/target/products/garboard.console.product/linux/gtk/x86_64
readonly PRODUCT_STAMP=$releng/garboard.console.product/target/product.built
readonly WINDOW=$releng/garboard.workbench.product/target/products/garboard.workbench.product/linux/gtk/$(uname -m)/garboard
readonly WINDOW_STAMP=$releng/garboard.workbench.product/target/product.built
# What is run once after a build, so that the JVM can cache the classes it needs.
readonly TRAINING=(check "$REPOSITORY/bundles/garboard.examples/records/motor-cruiser.garboard")
readonly BUILD_LOG=$releng/.cache/build.log

# True when there is no product, or something that goes into it is newer.
product_is_stale() {
    is_stale "$PRODUCT" "$PRODUCT_STAMP"
}

window_is_stale() {
    is_stale "$WINDOW" "$WINDOW_STAMP"
}

# is_stale PRODUCT STAMP
is_stale() {
    [ -e "$2" ] && [ -d "$1/plugins" ] || return 0
    [ -n "$(find "$REPOSITORY"/pom.xml "$REPOSITORY"/.mvn/* "$REPOSITORY"/features/*/* "$releng"/garboard.target/* \
        "$releng"/garboard.*.product/*.product "$releng"/garboard.*.product/pom.xml "$REPOSITORY"/bundles/*/* \
        -name target -prune -o -name bin -prune -o -newer "$2" -print -quit)" ]
}

# Call before Maven starts, and product_is_fresh when it has succeeded: what is edited in between counts as newer.
# Tycho compiles only the sources that changed, not those that use them; so all of them are compiled, which takes seconds.
product_build_starts() {
    rm -rf "$REPOSITORY"/bundles/*/target/classes "$REPOSITORY"/tests/*/target/classes
    mkdir -p "$(dirname "$PRODUCT_STAMP")" "$(dirname "$WINDOW_STAMP")" "$releng/.cache"
    touch "$releng/.cache/build.started"
}

# False when Maven was asked for other modules only.
product_was_built() {
    [ -n "$(find "$PRODUCT/artifacts.xml" -newer "$releng/.cache/build.started" 2> /dev/null)" ]
}

product_is_fresh() {
    touch -r "$releng/.cache/build.started" "$PRODUCT_STAMP"
}

window_was_built() {
    [ -n "$(find "$WINDOW/artifacts.xml" -newer "$releng/.cache/build.started" 2> /dev/null)" ]
}

window_is_fresh() {
    touch -r "$releng/.cache/build.started" "$WINDOW_STAMP"
}

build_product() {
    build_in_turn product_is_stale garboard.console.product
}

build_window() {
    build_in_turn window_is_stale garboard.workbench.product
}

# build_in_turn IS_STALE MODULE
build_in_turn() {
    find_maven
    mkdir -p "$releng/.cache"
    (
        # Two callers at once: the second waits, and then finds the work done.
        if command -v flock > /dev/null; then flock 9; fi
        "$1" || exit 0
        say "Building Garboard (about a minute the first time) ..."
        product_build_starts
        "$MAVEN" -B -ntp -f "$REPOSITORY/pom.xml" -pl "releng/$2" -am -DskipTests verify \
            < /dev/null > "$BUILD_LOG" 2>&1 || { grep '^\[ERROR\]' "$BUILD_LOG" | head -20 >&2; fail "Garboard could not be built; all of it is in $BUILD_LOG"; }
        finish_what_was_built
    ) 9> "$releng/.cache/lock"
}

# What Maven leaves to be done with the products that it made.
finish_what_was_built() {
    if product_was_built; then
        prepare_start
        prepare_class_cache
        product_is_fresh
    fi
    if window_was_built; then
        window_is_fresh
    fi
}

# Makes the class path that starts quickly: the framework without its signatures, and Start. The JVM would check the
# signature of every class it loads, and keeps no signed class in a cache.
prepare_start() {
    local framework=("$PRODUCT"/plugins/org.eclipse.osgi_*.jar) scratch=$releng/.cache/start
    rm -rf "$scratch"
    mkdir -p "$scratch"
    (cd "$scratch" && "$JAVA_HOME/bin/jar" -xf "${framework[0]}" && rm -f META-INF/*.SF META-INF/*.RSA)
    "$JAVA_HOME/bin/javac" --release $JDK_LEAST -encoding UTF-8 -cp "$scratch" -d "$scratch" "$releng/start/Start.java"
    # The part of the manifest after the first empty line holds the digests that belonged to the signatures.
    sed -i '/^\r\{0,1\}$/q' "$scratch/META-INF/MANIFEST.MF"
    "$JAVA_HOME/bin/jar" -cfm "$PRODUCT/plugins/start.jar" "$scratch/META-INF/MANIFEST.MF" -C "$scratch" .
    rm -rf "$scratch"
}

# The JVM's cache of loaded and linked classes, one for each build of the JDK.
class_cache() {
    local build
    build=$(sed -n 's/^JAVA_RUNTIME_VERSION="\(.*\)"/\1/p' "$JAVA_HOME/release")
    printf '%s/start-%s.aot' "$PRODUCT" "${build:-unknown}"
}

# Only JDK 25 and newer write such a cache in one go; without it everything works, half a second slower.
prepare_class_cache() {
    local cache
    cache=$(class_cache)
    [ ! -e "$cache" ] || return 0
    [ "$(jdk_major "$JAVA_HOME")" -ge 25 ] || return 0
    set_jvm_command -XX:AOTCacheOutput="$cache"
    "${JVM[@]}" "${TRAINING[@]}" < /dev/null > "$releng/.cache/class-cache.log" 2>&1 || true
}

# Sets JVM to the command that starts the product; the arguments given here are further options of the JVM.
set_jvm_command() {
    JVM=("$JAVA_HOME/bin/java" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xlog:disable "$@" -Djava.awt.headless=true
        -Dosgi.install.area="$PRODUCT" -Dosgi.configuration.area="$PRODUCT/configuration" -Dosgi.instance.area=@none
        -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 -cp "$PRODUCT/plugins/start.jar" Start)
}

run_product() {
    local cache
    # File names and output are UTF-8 even where no language is set.
    case ${LC_ALL:-${LC_CTYPE:-${LANG:-}}} in
        *[Uu][Tt][Ff]8* | *[Uu][Tt][Ff]-8*) ;;
        *) export LC_ALL=C.UTF-8 ;;
    esac
    cache=$(class_cache)
    if [ -e "$cache" ]; then
        set_jvm_command -XX:AOTCache="$cache"
    else
        set_jvm_command
    fi
    exec "${JVM[@]}" "$@"
}

# Opens the window; what is given here goes to the program.
run_window() {
    exec "$WINDOW/garboard" "$@"
}
