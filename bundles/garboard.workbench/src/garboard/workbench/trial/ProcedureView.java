// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import garboard.model.Answer;
import garboard.model.ProcedureStep;
import garboard.session.OpenRecord;
import garboard.session.trial.StartLine;
import garboard.session.trial.StartProcedure;
import garboard.session.trial.StartStep;
import garboard.session.trial.StartStep.Part;
import garboard.workbench.Desk;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** The first start as a guided list: a line for each step, the one that is at hand opened below it. */
final class ProcedureView implements View, StepLine.Wish {

    private final OpenRecord record;
    private final Desk desk;
    private final StartWording wording;
    private final StartProcedure procedure;
    private final StartAnswers answers;
    private final Texts.Of texts;
    private final Composite area;
    private final Said state;
    private final Composite list;
    private final Button takeIn;
    private final Map<String, StepLine> lines = new LinkedHashMap<>();
    private List<StartLine> shown = List.of();
    private Optional<StepDetail> detail = Optional.empty();
    private Optional<String> opened = Optional.empty();

    ProcedureView(Composite parent, OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.wording = new StartWording(desk);
        this.procedure = new StartProcedure(record, desk.clock(), wording::title);
        this.answers = new StartAnswers(record, desk, procedure, wording);
        this.texts = desk.texts(ProcedureView.class);
        area = new Composite(parent, SWT.NONE);
        area.setLayout(new Stacked(0, 4));
        area.setData("garboard.id", "trial.procedure");
        state = new Said(area, desk, Tone.QUIET);
        list = new Composite(area, SWT.NONE);
        list.setLayout(new Stacked(0, 0));
        var below = new Composite(area, SWT.NONE);
        RowLayoutFactory.fillDefaults().applyTo(below);
        takeIn = new Button(below, SWT.PUSH);
        takeIn.setText(texts.get("step.takeIn"));
        takeIn.setData("garboard.id", "step.takeIn");
        takeIn.addListener(SWT.Selection, event -> answers.takeIn());
        show();
    }

    /** The lines are made anew only when others stand there. */
    @Override
    public void show() {
        List<StartLine> now = procedure.lines();
        boolean same = now.stream().map(StartLine::id).toList().equals(List.copyOf(lines.keySet()));
        shown = now;
        if (!same) {
            make(now);
        }
        Optional<String> next = procedure.next().map(StartLine::id);
        now.forEach(line -> lines.get(line.id()).show(look(line, next.filter(line.id()::equals).isPresent())));
        opened.flatMap(this::line).ifPresent(line -> detail.ifPresent(made -> made.show(line)));
        long open = now.stream().filter(StartLine::open).count();
        state.say(procedure.bringsItsOwn() ? texts.get("step.own") : open == 0 ? texts.get("step.allDone") : texts.get("step.open", open, now.size()));
        takeIn.getParent().setVisible(procedure.bringsItsOwn());
    }

    private void make(List<StartLine> now) {
        close();
        for (Control old : list.getChildren()) {
            old.dispose();
        }
        lines.clear();
        Optional<Part> part = Optional.empty();
        for (StartLine line : now) {
            Optional<Part> its = line.guided().map(StartStep::part);
            if (its.isPresent() && !its.equals(part)) {
                var heading = new Said(list, desk, Tone.QUIET).say(texts.get("part." + its.get().name()));
                Lettering.bold(heading.control());
                part = its;
            }
            var made = new StepLine(list, desk, this);
            made.setData("garboard.id", "step:" + line.id());
            lines.put(line.id(), made);
        }
        opened.filter(lines::containsKey).ifPresentOrElse(id -> show(id), () -> opened = Optional.empty());
        list.setTabList(lines.values().stream().limit(1).toArray(Control[]::new));
        list.requestLayout();
    }

    private StepLine.Look look(StartLine line, boolean next) {
        String hazard = line.guided().flatMap(StartStep::hazard).map(wording::hazard).orElse("");
        String at = line.stored().map(ProcedureStep::getAt).map(moment -> moment.toLocalTime().toString()).orElse("");
        String state = line.answer() == Answer.UNANSWERED ? "" : texts.get("step.state." + line.answer().name(), at).strip();
        String remark = !line.concern().holds() ? texts.get("step.noConcern")
            : line.stillOpen().isPresent() ? texts.get("step.stillOpen", line.stillOpen().getAsInt())
                : line.laterBefore().isPresent() ? texts.get("step.laterBefore", line.laterBefore().getAsInt()) : "";
        return new StepLine.Look(line.number(), wording.title(line), hazard, line.answer(), state, remark, next);
    }

    private Optional<StartLine> line(String id) {
        return shown.stream().filter(line -> line.id().equals(id)).findFirst();
    }

    private Optional<String> id(StepLine line) {
        return lines.entrySet().stream().filter(entry -> entry.getValue() == line).map(Map.Entry::getKey).findFirst();
    }

    // What the lines wish ---------------------------------------------------------------------------------------------

    @Override
    public void open(StepLine line) {
        boolean shut = line.isOpen();
        close();
        opened = shut ? Optional.empty() : id(line);
        opened.ifPresent(this::show);
        list.requestLayout();
    }

    private void show(String id) {
        StepLine line = lines.get(id);
        line.setOpen(true);
        var made = new StepDetail(list, record, desk, wording, line(id).orElseThrow(), answer -> answerOpened(id, answer));
        made.control().moveBelow(line);
        detail = Optional.of(made);
        reach(line);
    }

    private void close() {
        opened.map(lines::get).filter(line -> !line.isDisposed()).ifPresent(line -> line.setOpen(false));
        detail.ifPresent(made -> made.control().dispose());
        detail = Optional.empty();
    }

    /** The keyboard reaches the list at one line, and what is open below it; arrows lead to the others. */
    private void reach(StepLine line) {
        list.setTabList(detail.map(made -> line.isOpen() ? new Control[] {line, made.control()} : new Control[] {line})
            .orElse(new Control[] {line}));
    }

    @Override
    public void answer(StepLine line, Answer answer) {
        id(line).flatMap(this::line).ifPresent(found -> answers.answer(found, answer));
    }

    /** What is done leads on to what comes next; anything else wants a word in the note first. */
    private void answerOpened(String id, Answer answer) {
        line(id).filter(found -> found.answer() != answer).ifPresent(found -> {
            answers.answer(found, answer);
            Optional<String> next = answer == Answer.YES ? procedure.next().map(StartLine::id) : Optional.empty();
            next.map(lines::get).ifPresentOrElse(line -> {
                if (!line.isOpen()) {
                    open(line);
                }
                line.setFocus();
            }, () -> detail.ifPresent(StepDetail::focusAnswer));
        });
    }

    @Override
    public void step(StepLine line, int by) {
        List<StepLine> all = List.copyOf(lines.values());
        int to = all.indexOf(line) + by;
        if (to >= 0 && to < all.size()) {
            reach(all.get(to));
            all.get(to).setFocus();
        }
    }

    /** Opens a step, or the one that is next for the list as a whole. */
    @Override
    public boolean reveal(String key) {
        Optional<String> id = key.equals("trial.procedure") ? procedure.next().map(StartLine::id)
            : shown.stream().map(StartLine::id).filter(found -> key.startsWith("trial.procedure[" + found + "]")).findFirst();
        id.map(lines::get).ifPresent(line -> {
            if (!line.isOpen()) {
                open(line);
            }
            if (detail.filter(made -> made.reveal(key)).isEmpty()) {
                line.setFocus();
            }
        });
        return id.isPresent();
    }

    @Override
    public void setFocus() {
        procedure.next().map(StartLine::id).map(lines::get).ifPresent(Control::setFocus);
    }
}
