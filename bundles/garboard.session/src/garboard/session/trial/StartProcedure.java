// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.ProcedureStep;
import garboard.model.Trial;
import garboard.session.Edits;
import garboard.session.Field;
import garboard.session.OpenRecord;

/**
 * The first start of an open record as a list to go through. A record that holds no procedure is shown the steps of this program; they enter it
 * all together when the first of them is touched, so that the report shows what was left out as well. Steps that a record brought with it stay
 * as they are, in their order.
 */
public final class StartProcedure {

    private final CommissioningRecord record;
    private final Edits edits;
    private final Clock clock;
    private final Function<StartStep, String> wording;

    /** @param wording what a step is called where it is written down, in the language of whoever works here */
    public StartProcedure(OpenRecord open, Clock clock, Function<StartStep, String> wording) {
        this.record = open.record();
        this.edits = open.edits();
        this.clock = clock;
        this.wording = wording;
    }

    /** {@return the lines as they stand: those of the record, and between them the steps of this program that it lacks} */
    public List<StartLine> lines() {
        var lines = new ArrayList<StartLine>();
        stored().forEach(step -> lines.add(line(step)));
        if (!bringsItsOwn()) {
            for (StartStep step : StartStep.values()) {
                if (lines.stream().noneMatch(line -> line.guided().filter(step::equals).isPresent()) && step.concern(record).holds()) {
                    lines.add(placeFor(step, lines), line(step));
                }
            }
        }
        return numbered(lines);
    }

    /** {@return whether the record has a procedure, and none of its steps is one of this program} */
    public boolean bringsItsOwn() {
        return !stored().isEmpty() && stored().stream().noneMatch(step -> StartStep.of(id(step)).isPresent());
    }

    /** {@return the first line that somebody has to look at} */
    public Optional<StartLine> next() {
        return lines().stream().filter(line -> line.concern().holds() && line.answer() == Answer.UNANSWERED).findFirst();
    }

    /** Puts the steps of this program that the record lacks into it, each at its place. */
    public void takeIn(String label) {
        edits.together(label, () -> {
            for (StartStep step : StartStep.values()) {
                if (find(step.id()).isEmpty() && step.concern(record).holds()) {
                    add(step, label);
                }
            }
            number(label);
        });
    }

    /**
     * Answers a line. What is said to be done, or to have been tried, gets the time of the clock if it has none; what is left open again loses it.
     *
     * @return the step, which is now in the record
     */
    public ProcedureStep answer(StartLine line, Answer answer, String label) {
        edits.together(label, () -> {
            ProcedureStep step = kept(line, label);
            if (answer == Answer.UNANSWERED) {
                edits.clear(Field.of(step, Literals.PROCEDURE_STEP__DONE), label);
                edits.clear(Field.of(step, Literals.PROCEDURE_STEP__AT), label);
                return;
            }
            edits.set(Field.of(step, Literals.PROCEDURE_STEP__DONE), answer, label);
            if (answer != Answer.NOT_APPLICABLE && step.getAt() == null) {
                edits.set(Field.of(step, Literals.PROCEDURE_STEP__AT), now(), label);
            }
        });
        return find(line.id()).orElseThrow();
    }

    /** {@return the step of a line in the record, put into it if need be} */
    public ProcedureStep kept(StartLine line, String label) {
        if (line.stored().isEmpty() && find(line.id()).isEmpty()) {
            takeIn(label);
        }
        return line.stored().or(() -> find(line.id())).orElseThrow();
    }

    /** Adds a sentence to the note of a line. */
    public void note(StartLine line, String sentence, String label) {
        edits.together(label, () -> {
            ProcedureStep step = kept(line, label);
            String before = step.getNote() == null || step.getNote().isBlank() ? "" : step.getNote().stripTrailing() + "\n";
            edits.set(Field.of(step, Literals.PROCEDURE_STEP__NOTE), before + sentence, label);
        });
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
    }

    private List<ProcedureStep> stored() {
        return Optional.ofNullable(record.getTrial()).map(Trial::getProcedure).<List<ProcedureStep>>map(List::copyOf).orElse(List.of());
    }

    private Optional<ProcedureStep> find(String id) {
        return stored().stream().filter(step -> id(step).equals(id)).findFirst();
    }

    private static String id(ProcedureStep step) {
        return step.getId() == null ? "" : step.getId();
    }

    private StartLine line(ProcedureStep step) {
        Optional<StartStep> guided = StartStep.of(id(step));
        return new StartLine(0, guided, Optional.of(step), guided.map(found -> found.concern(record)).orElse(Concern.YES), OptionalInt.empty(),
            OptionalInt.empty());
    }

    private StartLine line(StartStep step) {
        return new StartLine(0, Optional.of(step), Optional.empty(), step.concern(record), OptionalInt.empty(), OptionalInt.empty());
    }

    /** Behind the last step of this program that comes before it, else before the first that comes after it, else at the end. */
    private static int placeFor(StartStep step, List<StartLine> lines) {
        int after = lines.size();
        for (int index = lines.size() - 1; index >= 0; index--) {
            Optional<StartStep> other = lines.get(index).guided();
            if (other.filter(found -> found.compareTo(step) < 0).isPresent()) {
                return index + 1;
            }
            if (other.isPresent()) {
                after = index;
            }
        }
        return after;
    }

    private void add(StartStep step, String label) {
        ProcedureStep made = GarboardFactory.eINSTANCE.createProcedureStep();
        made.setId(step.id());
        made.setStep(wording.apply(step));
        if (record.getTrial() == null) {
            edits.add(record, List.of(Literals.COMMISSIONING_RECORD__TRIAL, Literals.TRIAL__PROCEDURE), made, label);
        } else {
            int place = placeFor(step, stored().stream().map(this::line).toList());
            edits.insert(record.getTrial(), Literals.TRIAL__PROCEDURE, place, made, label);
        }
    }

    /** The numbers on paper follow the order; those of steps that a record brought with it are left to whoever gave them. */
    private void number(String label) {
        List<ProcedureStep> steps = stored();
        for (int index = 0; index < steps.size(); index++) {
            ProcedureStep step = steps.get(index);
            if (StartStep.of(id(step)).isPresent() && !Integer.valueOf(index + 1).equals(step.getNumber())) {
                edits.set(Field.of(step, Literals.PROCEDURE_STEP__NUMBER), index + 1, label);
            }
        }
    }

    private static List<StartLine> numbered(List<StartLine> lines) {
        var numbered = new ArrayList<StartLine>();
        for (int index = 0; index < lines.size(); index++) {
            StartLine line = lines.get(index);
            boolean done = line.answer() == Answer.YES;
            List<StartLine> before = numbered.subList(0, index);
            numbered.add(line.in(index + 1, done ? first(before, StartLine::open) : OptionalInt.empty(),
                done ? first(before, other -> later(other, line)) : OptionalInt.empty()));
        }
        return List.copyOf(numbered);
    }

    private static OptionalInt first(List<StartLine> lines, java.util.function.Predicate<StartLine> which) {
        return lines.stream().filter(which).mapToInt(StartLine::number).findFirst();
    }

    private static boolean later(StartLine one, StartLine other) {
        Optional<OffsetDateTime> first = one.stored().map(ProcedureStep::getAt);
        Optional<OffsetDateTime> second = other.stored().map(ProcedureStep::getAt);
        return one.answer() == Answer.YES && first.isPresent() && second.filter(at -> first.get().isAfter(at)).isPresent();
    }
}
