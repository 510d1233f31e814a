// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Gravity;
import garboard.session.OpenRecord;
import garboard.session.trial.StartConditions;
import garboard.session.trial.StartConditions.Condition;
import garboard.session.trial.StartConditions.Topic;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** What must hold before the first start: one line for each topic, below it what falls short, each leading to its field. */
final class ConditionsView implements View {

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final Composite area;
    private final Said outcome;
    private final Composite list;
    private final Map<Topic, ConditionView> shown = new LinkedHashMap<>();

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
        outcome.say(outcome(conditions), tone(conditions));
        List<Topic> topics = conditions.conditions().stream().map(Condition::topic).toList();
        if (!topics.equals(List.copyOf(shown.keySet()))) {
            shown.values().forEach(ConditionView::dispose);
            shown.clear();
            topics.forEach(topic -> shown.put(topic, new ConditionView(list, desk, topic)));
        }
        conditions.conditions().forEach(condition -> shown.get(condition.topic()).show(condition));
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
}
