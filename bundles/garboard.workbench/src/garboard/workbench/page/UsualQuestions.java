// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import java.util.ArrayList;
import java.util.List;

import garboard.workbench.text.Texts;

/** Questions that a surveyor usually asks on a walk through such an installation: common practice, offered and never imposed. */
final class UsualQuestions {

    private UsualQuestions() {
    }

    /** {@return the questions in the language of the texts} */
    static List<String> in(Texts.Of texts) {
        var questions = new ArrayList<String>();
        for (int number = 1; texts.has("question." + number); number++) {
            questions.add(texts.get("question." + number));
        }
        return questions;
    }
}
