// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.checks.Gravity;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.OpenRecord;
import garboard.session.trial.StartConditions;
import garboard.session.trial.StartConditions.Condition;
import garboard.session.verdicts.Inputs;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** What must hold before the first start: one line for each topic, below it what falls short, each leading to its field. */
final class ConditionsView implements View {

    /** More than this nobody reads here; the list of verdicts has them all. */
    private static final int MOST = 5;

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final Composite area;
    private final Said outcome;
    private final Composite list;
    private List<Object> shown = List.of();

    ConditionsView(Composite parent, OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(ConditionsView.class);
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new Stacked(0, 4));
        area.setData("garboard.id", "trial.conditions");
        outcome = new Said(area, desk, Tone.PLAIN);
        list = new Composite(area, SWT.NONE);
        list.setLayout(new Stacked(0, 2));
        show();
    }

    @Override
    public void show() {
        var conditions = StartConditions.of(record.verdicts().evaluation());
        List<Object> now = conditions.conditions().stream().<Object>flatMap(condition -> java.util.stream.Stream.concat(
            java.util.stream.Stream.of(condition.topic(), condition.met()),
            condition.open().stream().flatMap(verdict -> java.util.stream.Stream.of(verdict.standing(), verdict.check().id(), verdict.sentence()))))
            .toList();
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        outcome.say(outcome(conditions), tone(conditions));
        for (Control old : list.getChildren()) {
            old.dispose();
        }
        conditions.conditions().forEach(this::add);
        list.requestLayout();
    }

    private String outcome(StartConditions conditions) {
        int shortfalls = conditions.shortfalls().size();
        if (conditions.endangersPeople()) {
            long people = conditions.shortfalls().stream().filter(verdict -> verdict.check().gravity() == Gravity.DANGER_TO_PEOPLE).count();
            return texts.get("conditions.people", people, shortfalls - people);
        }
        return shortfalls > 0 ? texts.get("conditions.machine", shortfalls)
            : conditions.cannotTell() > 0 ? texts.get("conditions.unknown", conditions.cannotTell()) : texts.get("conditions.hold");
    }

    private static Tone tone(StartConditions conditions) {
        return conditions.endangersPeople() ? Tone.DANGER : !conditions.shortfalls().isEmpty() ? Tone.WARNING
            : conditions.cannotTell() > 0 ? Tone.OPEN : Tone.GOOD;
    }

    private void add(Condition condition) {
        var line = new MarkLine(list, desk);
        line.setData("garboard.id", "trial.condition." + condition.topic().name());
        line.show(texts.get("condition." + condition.topic().name()), condition.standing(), words(condition));
        List<Verdict> open = condition.open().stream().filter(verdict -> verdict.standing() != Standing.CANNOT_TELL).toList();
        List<Verdict> unknown = condition.open().stream().filter(verdict -> verdict.standing() == Standing.CANNOT_TELL).toList();
        if (condition.holds()) {
            return;
        }
        var below = new Composite(list, SWT.NONE);
        below.setLayout(new Stacked(Lettering.height(list, 1.5), 2));
        open.stream().limit(MOST).forEach(verdict -> lead(below, texts.get("condition.verdict", Leading.to(Inputs.target(verdict), verdict.check().title()),
            Leading.plain(verdict.sentence()))));
        if (open.size() > MOST) {
            lead(below, texts.get("condition.more", Leading.to(Inputs.target(open.get(MOST)), texts.get("condition.more.link", open.size() - MOST))));
        }
        if (!unknown.isEmpty()) {
            String first = Inputs.target(unknown.getFirst());
            lead(below, texts.get("condition.unknown", unknown.size(), Leading.to(first, Places.name(desk, first))));
        }
    }

    private void lead(Composite parent, String words) {
        Leading.toPlaces(parent, desk).say(words);
    }

    private String words(Condition condition) {
        long shortfalls = condition.open().stream().filter(Verdict::needsAction).count();
        long borderline = condition.open().size() - shortfalls - condition.cannotTell();
        return condition.holds() ? texts.get("condition.holds", condition.met())
            : shortfalls > 0 ? texts.get("condition.short", shortfalls)
                : borderline > 0 ? texts.get("condition.borderline", borderline) : texts.get("condition.cannotTell", condition.cannotTell());
    }
}
