// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.Cooling;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.model.LoadStep;
import garboard.model.PhaseSystem;
import garboard.model.Reading;
import garboard.quantity.Quantity;
import garboard.session.Edits;
import garboard.session.OpenRecord;

/** The readings of the load steps as the lines of a clipboard: which columns it has, and how a line is begun. */
public final class ReadingSheet {

    private final CommissioningRecord record;
    private final Edits edits;
    private final Clock clock;

    public ReadingSheet(OpenRecord open, Clock clock) {
        this.record = open.record();
        this.edits = open.edits();
        this.clock = clock;
    }

    /** {@return all fields of a reading that can be a column, in the order of the model} */
    public static List<EAttribute> allColumns() {
        return Literals.READING.getEAllAttributes().stream().filter(field -> field != Literals.ITEM__ID).toList();
    }

    /** {@return the columns that suit the set, and those in which anything is entered already} */
    public List<EAttribute> usualColumns() {
        Set<EAttribute> usual = new LinkedHashSet<>(List.of(Literals.READING__AT, Literals.READING__VOLTAGE1, Literals.READING__CURRENT1,
            Literals.READING__FREQUENCY, Literals.READING__POWER, Literals.READING__OIL_PRESSURE, Literals.READING__COOLANT_TEMPERATURE,
            Literals.READING__EXHAUST_MIXED, Literals.READING__BACK_PRESSURE, Literals.READING__COMPARTMENT_TEMPERATURE,
            Literals.READING__BATTERY_VOLTAGE, Literals.READING__SMOKE, Literals.READING__NOTE, Literals.READING__INSTRUMENTS));
        Optional<GeneratorSet> set = Optional.ofNullable(record.getGeneratorSet());
        PhaseSystem phases = set.map(GeneratorSet::getPhases).orElse(PhaseSystem.NOT_ENTERED);
        if (phases == PhaseSystem.SPLIT_PHASE || phases == PhaseSystem.THREE_PHASE) {
            usual.addAll(List.of(Literals.READING__VOLTAGE2, Literals.READING__CURRENT2));
        }
        if (phases == PhaseSystem.THREE_PHASE) {
            usual.addAll(List.of(Literals.READING__VOLTAGE3, Literals.READING__CURRENT3));
        }
        if (set.map(GeneratorSet::getCooling).filter(Cooling.KEEL_COOLED::equals).isEmpty()) {
            usual.addAll(List.of(Literals.READING__RAW_WATER_IN, Literals.READING__RAW_WATER_OUT));
        }
        if (Optional.ofNullable(record.getExhaust()).map(exhaust -> exhaust.getTestTapFitted()).filter(Answer.YES::equals).isPresent()) {
            usual.add(Literals.READING__EXHAUST_DRY);
        }
        List<Reading> readings = LoadLadder.steps(record).stream().flatMap(step -> step.getReadings().stream()).toList();
        return allColumns().stream().filter(field -> usual.contains(field) || readings.stream().anyMatch(reading -> reading.eIsSet(field))).toList();
    }

    /** {@return the beginning of a line at a step, not in the record yet: the time of the clock and the instruments of the line before} */
    public Reading begin(LoadStep step) {
        Reading reading = GarboardFactory.eINSTANCE.createReading();
        reading.setAt(now());
        lastWithInstruments(step).ifPresent(reading::setInstruments);
        return reading;
    }

    /** Begins a line at a step. @return the reading */
    public Reading add(LoadStep step, String label) {
        return edits.add(step, List.of(Literals.LOAD_STEP__READINGS), begin(step), label);
    }

    /**
     * Begins a line at a step as a copy of the last line, to be written over: of that at this step, else of the step before. The time is that of
     * the clock; the note stays behind.
     */
    public Reading addLikeLast(LoadStep step, String label) {
        Optional<Reading> last = last(step);
        if (last.isEmpty()) {
            return add(step, label);
        }
        Reading reading = EcoreUtil.copy(last.get());
        reading.eUnset(Literals.ITEM__ID);
        reading.eUnset(Literals.READING__NOTE);
        reading.setAt(now());
        return edits.add(step, List.of(Literals.LOAD_STEP__READINGS), reading, label);
    }

    /** {@return the reading that a new one at a step follows} */
    public Optional<Reading> last(LoadStep step) {
        return before(step).stream().reduce((one, other) -> other);
    }

    private Optional<String> lastWithInstruments(LoadStep step) {
        return before(step).stream().map(Reading::getInstruments).filter(told -> told != null && !told.isBlank()).reduce((one, other) -> other);
    }

    /** All readings up to and with those of a step. */
    private List<Reading> before(LoadStep step) {
        var readings = new ArrayList<Reading>();
        for (LoadStep other : LoadLadder.steps(record)) {
            readings.addAll(other.getReadings());
            if (other == step) {
                break;
            }
        }
        return readings;
    }

    /** {@return whether a column holds quantities} */
    public static boolean isQuantity(EAttribute column) {
        return Quantity.class.isAssignableFrom(column.getEAttributeType().getInstanceClass());
    }

    private OffsetDateTime now() {
        return OffsetDateTime.now(clock).truncatedTo(ChronoUnit.MINUTES);
    }
}
