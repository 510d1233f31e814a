// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;

import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.InspectionAnswer;
import garboard.model.RecordPath;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.RecordChange;
import garboard.session.Stop;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.fields.FieldHelp;
import garboard.workbench.fields.SheetScroll;
import garboard.workbench.text.Texts;

/** What was asked on board: each question with its answer, a note and photographs. */
final class InspectionPage implements Page {

    /** So many cards are made before the page is shown, the others while it can be used already. */
    private static final int AT_ONCE = 4;
    private static final int PAUSE = 60;

    private final OpenRecord record;
    private final Desk desk;
    private final Ask ask;
    private final Texts.Of texts;
    private final List<QuestionCard> cards = new ArrayList<>();
    private Composite list;
    private Label empty;
    private Button usual;
    private Subscription edits;

    InspectionPage(OpenRecord record, Desk desk, Ask ask) {
        this.record = record;
        this.desk = desk;
        this.ask = ask;
        this.texts = desk.texts(InspectionPage.class);
    }

    @Override
    public Control create(Composite parent) {
        var area = new Composite(parent, SWT.NONE);
        area.setData("garboard.id", "page:INSPECTION");
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(area);
        var sheet = new SheetScroll(area, desk);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sheet.control());
        PageTitle.make(sheet.content(), desk, Stop.INSPECTION);
        empty = new Label(sheet.content(), SWT.WRAP);
        empty.setText(texts.get("inspection.empty"));
        empty.setForeground(desk.palette().faint());
        list = new Composite(sheet.content(), SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 10).applyTo(list);
        bar(sheet.content());
        var help = new FieldHelp(area, record, desk, sheet.content());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(help.control());
        edits = record.edits().onChange(this::follow);
        Subscription palette = desk.onPalette(now -> empty.setForeground(now.faint()));
        area.addListener(SWT.Dispose, event -> palette.close());
        show();
        return area;
    }

    private void bar(Composite parent) {
        var bar = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(bar);
        var add = new Button(bar, SWT.PUSH);
        add.setText(texts.get("inspection.add"));
        add.setData("garboard.id", "inspection.add");
        add.addListener(SWT.Selection, event -> add());
        usual = new Button(bar, SWT.PUSH);
        usual.setText(texts.get("inspection.usual"));
        usual.setData("garboard.id", "inspection.usual");
        usual.addListener(SWT.Selection, event -> addUsual());
    }

    private List<InspectionAnswer> answers() {
        return record.record().getInspections();
    }

    private void add() {
        InspectionAnswer made = record.edits().add(record.record(), List.of(Literals.COMMISSIONING_RECORD__INSPECTIONS),
            GarboardFactory.eINSTANCE.createInspectionAnswer(), texts.get("step.addQuestion"));
        reveal(RecordPath.key(made, Literals.INSPECTION_ANSWER__QUESTION));
    }

    /** Adds the questions that are usually asked and are not asked yet. */
    private void addUsual() {
        List<String> missing = missing();
        record.edits().together(texts.get("step.addQuestions"), () -> missing.forEach(question -> {
            InspectionAnswer made = GarboardFactory.eINSTANCE.createInspectionAnswer();
            made.setQuestion(question);
            record.edits().add(record.record(), List.of(Literals.COMMISSIONING_RECORD__INSPECTIONS), made, "");
        }));
        answers().stream().filter(answer -> missing.contains(answer.getQuestion())).findFirst().ifPresent(first -> reveal(RecordPath.key(first)));
    }

    private List<String> missing() {
        List<String> asked = answers().stream().map(InspectionAnswer::getQuestion).toList();
        return UsualQuestions.in(texts).stream().filter(question -> !asked.contains(question)).toList();
    }

    private void follow(RecordChange change) {
        boolean list = change.touched().stream().anyMatch(one -> one.feature() == Literals.COMMISSIONING_RECORD__INSPECTIONS);
        boolean photographs = change.features().contains(Literals.INSPECTION_ANSWER__PHOTOGRAPHS)
            || change.features().contains(Literals.COMMISSIONING_RECORD__PHOTOGRAPHS);
        if (list) {
            show();
        } else if (photographs) {
            cards.forEach(QuestionCard::show);
        }
    }

    private void show() {
        List<InspectionAnswer> now = answers();
        cards.removeIf(card -> {
            boolean gone = !now.contains(card.answer());
            if (gone) {
                card.control().dispose();
            }
            return gone;
        });
        int made = 0;
        for (int index = 0; index < now.size(); index++) {
            InspectionAnswer answer = now.get(index);
            if (cards.stream().noneMatch(card -> card.answer() == answer) && ++made > AT_ONCE) {
                list.getDisplay().timerExec(PAUSE, this::showMore);
                break;
            }
            QuestionCard card = cards.stream().filter(known -> known.answer() == answer).findFirst().orElseGet(() -> card(answer));
            card.control().moveBelow(index == 0 ? null : cards.get(index - 1).control());
            if (index == 0) {
                card.control().moveAbove(null);
            }
            cards.remove(card);
            cards.add(index, card);
        }
        empty.setVisible(now.isEmpty());
        usual.setEnabled(!missing().isEmpty());
        list.requestLayout();
    }

    private void showMore() {
        if (!list.isDisposed()) {
            show();
        }
    }

    private QuestionCard card(InspectionAnswer answer) {
        var card = new QuestionCard(list, record, desk, ask, answer);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(card.control());
        cards.add(card);
        return card;
    }

    @Override
    public boolean reveal(String key) {
        while (cards.size() < answers().size()) {
            show();
        }
        return key.equals("inspections") && !cards.isEmpty() ? cards.getFirst().setFocus() : cards.stream().anyMatch(card -> card.reveal(key));
    }

    @Override
    public void setFocus() {
        if (cards.isEmpty()) {
            usual.setFocus();
        } else {
            cards.getFirst().setFocus();
        }
    }

    @Override
    public void close() {
        edits.close();
    }
}
