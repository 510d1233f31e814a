// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.trial.StartConditions.Condition;
import garboard.session.trial.StartConditions.Topic;
import garboard.session.verdicts.Inputs;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** One condition of the first start: how it stands, and below it what keeps it from holding, each leading to its field. */
final class ConditionView {

    /** More than this nobody reads here; the list of verdicts has them all. */
    private static final int MOST = 5;

    private final Desk desk;
    private final Topic topic;
    private final Texts.Of texts;
    private final Composite area;
    private final MarkLine line;
    private final Composite below;
    private final List<Leading> leads = new ArrayList<>();

    ConditionView(Composite parent, Desk desk, Topic topic) {
        this.desk = desk;
        this.topic = topic;
        this.texts = desk.texts(ConditionView.class);
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new Stacked(0, 0));
        line = new MarkLine(area, desk);
        line.setData("garboard.id", "trial.condition." + topic.name());
        below = new Composite(area, SWT.NONE);
        below.setLayout(new Stacked(Lettering.height(parent, 1.5), 2));
    }

    void dispose() {
        area.dispose();
    }

    void show(Condition condition) {
        line.show(texts.get("condition." + topic.name()), condition.standing(), words(condition));
        List<String> said = said(condition);
        while (leads.size() < said.size()) {
            leads.add(Leading.toPlaces(below, desk));
        }
        for (int index = 0; index < leads.size(); index++) {
            leads.get(index).say(index < said.size() ? said.get(index) : "");
        }
        if (below.getVisible() == said.isEmpty()) {
            below.setVisible(!said.isEmpty());
            below.requestLayout();
        }
    }

    private List<String> said(Condition condition) {
        var said = new ArrayList<String>();
        List<Verdict> open = condition.open().stream().filter(verdict -> verdict.standing() != Standing.CANNOT_TELL).toList();
        List<Verdict> unknown = condition.open().stream().filter(verdict -> verdict.standing() == Standing.CANNOT_TELL).toList();
        open.stream().limit(MOST).forEach(verdict -> said.add(texts.get("condition.verdict",
            Leading.to(Inputs.target(verdict), verdict.check().title()), Leading.plain(verdict.sentence()))));
        if (open.size() > MOST) {
            said.add(texts.get("condition.more", Leading.to(Inputs.target(open.get(MOST)), texts.get("condition.more.link", open.size() - MOST))));
        }
        if (!unknown.isEmpty()) {
            String first = Inputs.target(unknown.getFirst());
            said.add(texts.get("condition.unknown", unknown.size(), Leading.to(first, Places.name(desk, first))));
        }
        return said;
    }

    private String words(Condition condition) {
        long shortfalls = condition.open().stream().filter(Verdict::needsAction).count();
        long borderline = condition.open().size() - shortfalls - condition.cannotTell();
        return condition.holds() ? texts.get("condition.holds", condition.met())
            : shortfalls > 0 ? texts.get("condition.short", shortfalls)
                : borderline > 0 ? texts.get("condition.borderline", borderline) : texts.get("condition.cannotTell", condition.cannotTell());
    }
}
