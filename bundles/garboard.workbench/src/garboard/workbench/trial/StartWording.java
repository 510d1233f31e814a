// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import garboard.model.ProcedureStep;
import garboard.session.trial.StartLine;
import garboard.session.trial.StartStep;
import garboard.session.trial.StartStep.Hazard;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/**
 * How the steps of a first start are worded in the language of the window. A step that was written down in another language is shown in this
 * one; what somebody changed in it is shown as it was written.
 */
final class StartWording {

    private static final List<Locale> LANGUAGES = List.of(Locale.ENGLISH, Locale.GERMAN);

    private final Texts.Of texts;
    private final List<Texts.Of> all;

    StartWording(Desk desk) {
        texts = desk.texts(StartWording.class);
        all = LANGUAGES.stream().map(language -> Texts.in(language).of(StartWording.class)).toList();
    }

    /** {@return what a step is called} */
    String title(StartStep step) {
        return texts.get(step.id());
    }

    String title(StartLine line) {
        Optional<String> written = line.stored().map(ProcedureStep::getStep).filter(words -> !words.isBlank());
        return line.guided().filter(step -> written.isEmpty() || isOurs(step, written.get())).map(this::title)
            .or(() -> written).orElse(texts.get("step.untitled"));
    }

    private boolean isOurs(StartStep step, String written) {
        return all.stream().anyMatch(language -> language.get(step.id()).equals(written));
    }

    /** {@return what to do in a step} */
    String whatToDo(StartStep step) {
        return texts.get(step.id() + ".do");
    }

    /** {@return what to beware of} */
    Optional<String> caution(StartStep step) {
        return step.hazard().map(hazard -> texts.get(step.id() + ".caution"));
    }

    String hazard(Hazard hazard) {
        return texts.get("hazard." + hazard.name());
    }
}
