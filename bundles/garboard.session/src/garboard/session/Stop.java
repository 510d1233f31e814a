// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__AC_OUTPUT;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__ALARMS;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__EXHAUST;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__FUEL_SUPPLY;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__GENERATOR_SET;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__INSPECTIONS;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__MOUNTING;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__RAW_WATER;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__STARTING_BATTERY;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__TRIAL;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__UPKEEP;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__VENTILATION;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__VESSEL;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;

/** The stops of the way from an empty record to a signed one, in the order in which a person takes them. */
public enum Stop {
    RECORD(Stage.INSTALLATION), VESSEL(Stage.INSTALLATION, COMMISSIONING_RECORD__VESSEL),
    GENERATOR_SET(Stage.INSTALLATION, COMMISSIONING_RECORD__GENERATOR_SET),
    STARTING_BATTERY(Stage.INSTALLATION, COMMISSIONING_RECORD__STARTING_BATTERY),
    FUEL(Stage.INSTALLATION, COMMISSIONING_RECORD__FUEL_SUPPLY), RAW_WATER(Stage.INSTALLATION, COMMISSIONING_RECORD__RAW_WATER),
    EXHAUST(Stage.INSTALLATION, COMMISSIONING_RECORD__EXHAUST), VENTILATION(Stage.INSTALLATION, COMMISSIONING_RECORD__VENTILATION),
    MOUNTING(Stage.INSTALLATION, COMMISSIONING_RECORD__MOUNTING), AC_OUTPUT(Stage.INSTALLATION, COMMISSIONING_RECORD__AC_OUTPUT),
    ALARMS(Stage.INSTALLATION, COMMISSIONING_RECORD__ALARMS), INSPECTION(Stage.INSTALLATION, COMMISSIONING_RECORD__INSPECTIONS),
    PHOTOGRAPHS(Stage.INSTALLATION),
    FIRST_START(Stage.TRIAL, COMMISSIONING_RECORD__TRIAL), LOAD_TRIAL(Stage.TRIAL), SEA_RUN(Stage.TRIAL),
    UPKEEP(Stage.HANDING_OVER, COMMISSIONING_RECORD__UPKEEP), SIGN_OFF(Stage.HANDING_OVER), CALCULATORS(Stage.TOOLS);

    /** What the stops belong to. */
    public enum Stage {
        INSTALLATION, TRIAL, HANDING_OVER, TOOLS;

        public List<Stop> stops() {
            return STOPS.stream().filter(stop -> stop.stage == this).toList();
        }
    }

    private static final List<Stop> STOPS = List.of(values());
    /** Asked for each verdict after each edit. */
    private static final Map<String, Stop> BY_PART = STOPS.stream().filter(stop -> stop.part.isPresent())
        .collect(Collectors.toUnmodifiableMap(stop -> stop.part.orElseThrow().getName(), stop -> stop));

    private final Stage stage;
    private final Optional<EReference> part;

    Stop(Stage stage) {
        this.stage = stage;
        this.part = Optional.empty();
    }

    Stop(Stage stage, EReference part) {
        this.stage = stage;
        this.part = Optional.of(part);
    }

    public Stage stage() {
        return stage;
    }

    /** {@return the stop after this one} */
    public Optional<Stop> next() {
        return ordinal() + 1 < STOPS.size() ? Optional.of(STOPS.get(ordinal() + 1)) : Optional.empty();
    }

    /** {@return the stop before this one} */
    public Optional<Stop> previous() {
        return ordinal() > 0 ? Optional.of(STOPS.get(ordinal() - 1)) : Optional.empty();
    }

    /** {@return the part of the record that the stop is about, where it is about one} */
    public Optional<EReference> part() {
        return part;
    }

    /** {@return the stop where a place of the record is entered} @param key a key as {@link garboard.model.RecordPath} writes it */
    public static Stop of(String key) {
        if (key.startsWith("trial.")) {
            return key.startsWith("trial.loadSteps") ? LOAD_TRIAL : key.startsWith("trial.seaRun") ? SEA_RUN : FIRST_START;
        }
        int end = 0;
        while (end < key.length() && key.charAt(end) != '.' && key.charAt(end) != '[') {
            end++;
        }
        return switch (key.substring(0, end)) {
            case "photographs" -> PHOTOGRAPHS;
            case "signatures", "acceptances" -> SIGN_OFF;
            case String first -> BY_PART.getOrDefault(first, RECORD);
        };
    }

    /** {@return the stop where parts of a class are entered; for one that stands in several places the first} */
    public static Stop of(EClass type) {
        return way(COMMISSIONING_RECORD, type).map(Stop::of).orElse(RECORD);
    }

    private static Optional<String> way(EClass from, EClass type) {
        for (EReference reference : from.getEAllContainments()) {
            Optional<String> below = reference.getEReferenceType() == type ? Optional.of("") : way(reference.getEReferenceType(), type).map("."::concat);
            if (below.isPresent()) {
                return Optional.of(reference.getName() + below.get());
            }
        }
        return Optional.empty();
    }
}
