// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import garboard.checks.Standing;
import garboard.session.handover.DueTask;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** When a task of the upkeep is due, in words. */
final class DueWords {

    private final Texts.Of texts;

    DueWords(Desk desk) {
        this.texts = desk.texts(DueWords.class);
    }

    /** {@return the days and hours at which it is due, short enough for a cell} */
    String due(DueTask due) {
        String when = due.onDay().isPresent() && due.atHours().isPresent()
            ? texts.get("due.either", due.onDay().get().toString(), due.atHours().get().toString())
            : due.onDay().map(Object::toString).or(() -> due.atHours().map(hours -> texts.get("due.hours", hours.toString()))).orElse("");
        return switch (due.state()) {
            case OVERDUE -> texts.get("due.overdue", when);
            case SOON -> texts.get("due.soon", when);
            case IN_ORDER, NO_METER -> when;
            case NO_BEGINNING -> texts.get("due.noBeginning");
            case NO_INTERVAL -> texts.get("due.noInterval");
        };
    }

    /** {@return the whole sentence} */
    String sentence(DueTask due) {
        String name = due.task().getTask() == null || due.task().getTask().isBlank() ? texts.get("due.unnamed") : due.task().getTask();
        String when = due.onDay().isPresent() && due.atHours().isPresent()
            ? texts.get("due.sentence.either", due.onDay().get().toString(), due.atHours().get().toString())
            : due.onDay().map(day -> texts.get("due.sentence.day", day.toString()))
                .or(() -> due.atHours().map(hours -> texts.get("due.sentence.hours", hours.toString()))).orElse("");
        String expected = due.expected().filter(day -> due.state() != DueTask.State.OVERDUE)
            .map(day -> " " + texts.get("due.sentence.expected", day.toString())).orElse("");
        String first = due.firstTime() ? " " + texts.get("due.sentence.first") : "";
        String key = "due.state." + due.state().name();
        return texts.get(key, name, when) + expected + first;
    }

    static Standing mark(DueTask due) {
        return switch (due.state()) {
            case OVERDUE -> Standing.FALLS_SHORT;
            case SOON -> Standing.BORDERLINE;
            case IN_ORDER -> Standing.MEETS;
            case NO_METER, NO_BEGINNING, NO_INTERVAL -> Standing.CANNOT_TELL;
        };
    }
}
