// SPDX-License-Identifier: EPL-2.0
package garboard.session.drawing;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import garboard.checks.Verdict;
import garboard.quantity.UnitSystem;
import garboard.report.Figures;
import garboard.report.drawing.Arrangement;
import garboard.report.drawing.Showing;
import garboard.report.drawing.View;
import garboard.report.drawing.Words;
import garboard.session.Listeners;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.drawing.PointMove.Across;
import garboard.session.verdicts.Inputs;
import garboard.session.verdicts.VerdictKey;

/** What a person looks at on the drawings of an open record: which view, in which attitude, which part is chosen, which is being moved. */
public final class DrawingState implements AutoCloseable {

    private final OpenRecord open;
    private final Words words;
    private final ViewMemory views;
    private final AttitudeChoice attitude = new AttitudeChoice();
    private final Listeners<DrawingState> listeners = new Listeners<>();
    private final List<Subscription> subscriptions;
    private Optional<Arrangement> arrangement = Optional.empty();
    private Optional<String> chosen = Optional.empty();
    private Optional<PointMove> nudging = Optional.empty();
    private Stop stop = Stop.VESSEL;

    /** @param views which view a person chose at which stop, kept beyond this record */
    public DrawingState(OpenRecord open, Words words, ViewMemory views) {
        this.open = open;
        this.words = words;
        this.views = views;
        this.subscriptions = List.of(open.edits().onChange(change -> outdated()), open.verdicts().onChange(evaluation -> outdated()),
            attitude.onChange(now -> tell()));
    }

    private void outdated() {
        arrangement = Optional.empty();
        tell();
    }

    private void tell() {
        listeners.tell(this);
    }

    /** {@return the subscription of a listener that is told when there is something else to see} */
    public Subscription onChange(Consumer<? super DrawingState> listener) {
        return listeners.add(listener);
    }

    public OpenRecord open() {
        return open;
    }

    /** {@return what there is to draw, as the record stands now} */
    public Arrangement arrangement() {
        if (arrangement.isEmpty()) {
            arrangement = Optional.of(Arrangement.of(open.record(), open.verdicts().evaluation(), words));
        }
        return arrangement.get();
    }

    public AttitudeChoice attitude() {
        return attitude;
    }

    public Words words() {
        return words;
    }

    /** {@return what is to be drawn now} @param value whether a value is written beside the chosen part */
    public Showing showing(UnitSystem units, boolean value) {
        return new Showing(arrangement(), attitude.attitude(arrangement().water()), ViewMemory.about(stop), chosen, value, Figures.in(units), words);
    }

    // Where the person is ---------------------------------------------------------------------------------------------

    public void goTo(Stop next) {
        if (next != stop) {
            stop = next;
            tell();
        }
    }

    public View view() {
        return views.at(stop);
    }

    /** Shows another view at this stop, from now on. */
    public void choose(View view) {
        if (view != view()) {
            views.choose(stop, view);
            tell();
        }
    }

    // The part that is chosen -----------------------------------------------------------------------------------------

    /** {@return the id of the part, or of what is lacking, that is chosen} */
    public Optional<String> chosen() {
        return chosen;
    }

    public void choose(Optional<String> id) {
        if (!id.equals(chosen)) {
            chosen = id;
            nudging = Optional.empty();
            tell();
        }
    }

    /** Chooses the part to which a place in the record belongs; what belongs to none changes nothing. */
    public void chooseOwnerOf(String key) {
        arrangement().partOf(key).ifPresent(part -> choose(Optional.of(part.id())));
    }

    /** Chooses the part that a verdict is about: its subject, else what it would have changed or reads. */
    public void chooseSubjectOf(VerdictKey key) {
        Optional<Verdict> verdict = open.verdicts().evaluation().verdicts().stream().filter(one -> VerdictKey.of(one).equals(key)).findFirst();
        Stream.concat(Stream.of(key.subject()), verdict.stream().flatMap(one -> Stream.concat(Stream.of(Inputs.target(one)), Inputs.keys(one).stream())))
            .filter(place -> arrangement().partOf(place).isPresent()).findFirst().ifPresent(this::chooseOwnerOf);
    }

    // Moving ----------------------------------------------------------------------------------------------------------

    /** {@return what runs across a view, as far as a part can be moved that way} */
    public static Across across(View view) {
        return switch (view) {
            case SIDE -> Across.FORWARD;
            case CROSS -> Across.STARBOARD;
            case RUNS, CLEARANCE -> Across.NOTHING;
        };
    }

    /**
     * {@return a move of a part by the pointer; nothing where it has no height to move}
     *
     * @param label what the step is called in "Undo ..."
     */
    public Optional<PointMove> move(String id, View view, UnitSystem units, String label) {
        nudging = Optional.empty();
        return begin(id, view, units, label);
    }

    private Optional<PointMove> begin(String id, View view, UnitSystem units, String label) {
        return arrangement().part(id).flatMap(part -> PointMove.of(open, part.key(), across(view), units, label));
    }

    /** How far the keyboard moves. @param coarse in large steps */
    public record Nudge(int up, int aside, boolean coarse) {
    }

    /** Moves the chosen part by the keyboard. @return the move, for what it says; nothing where there is none to move */
    public Optional<PointMove> nudge(Nudge by, View view, UnitSystem units, String label) {
        Optional<String> key = chosen.flatMap(arrangement()::part).map(part -> part.key());
        if (key.isEmpty()) {
            return Optional.empty();
        }
        nudging = nudging.filter(move -> move.isHere() && move.isOf(key.get(), across(view)))
            .or(() -> begin(chosen.orElseThrow(), view, units, label));
        nudging.ifPresent(move -> move.nudge(by.up, by.aside, by.coarse));
        return nudging;
    }

    @Override
    public void close() {
        subscriptions.forEach(Subscription::close);
    }
}
