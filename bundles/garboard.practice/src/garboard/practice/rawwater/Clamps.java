// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

/** How many clamps a hose end below the waterline has. */
final class Clamps {

    static final int WANTED = 2;

    private Clamps() {
    }

    static String inWords(int count) {
        return count == 1 ? "one clamp" : count + " clamps";
    }
}
