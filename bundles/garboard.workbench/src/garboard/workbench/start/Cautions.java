// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.List;

import garboard.workbench.text.Texts;

/** What can kill, in the order in which it does so most often: a line for the start page, and all of it for the dialog. */
enum Cautions {
    CARBON_MONOXIDE("carbonMonoxide"), PETROL("petrol"), MAINS("mains"), RUNNING("running"), HOSE("hose"), BATTERY("battery");

    private final String key;

    Cautions(String key) {
        this.key = key;
    }

    static List<Cautions> all() {
        return List.of(values());
    }

    /** {@return the danger in a sentence} */
    String lead(Texts.Of texts) {
        return texts.get("caution." + key + ".lead");
    }

    /** {@return what to do, in short} */
    String brief(Texts.Of texts) {
        return texts.get("caution." + key + ".brief");
    }

    /** {@return what to do, in full} */
    String full(Texts.Of texts) {
        return texts.get("caution." + key + ".full");
    }
}
