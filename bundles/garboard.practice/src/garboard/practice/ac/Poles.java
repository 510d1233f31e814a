// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

/** Numbers of poles and conductors in words. */
final class Poles {

    private Poles() {
    }

    static String inWords(int poles) {
        return "the breaker opens " + poles(poles);
    }

    static String poles(int count) {
        return count + (count == 1 ? " pole" : " poles");
    }

    static String conductors(int live) {
        return live + (live == 1 ? " live conductor" : " live conductors");
    }
}
