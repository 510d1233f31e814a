// SPDX-License-Identifier: EPL-2.0
package garboard.physics.cable;

import java.util.List;
import java.util.Optional;

import garboard.physics.calculation.Answer;
import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;
import garboard.quantity.Current;

/** The calculations of permitted currents, overcurrent devices, grounding conductors and terminals. */
final class AmpacityCalculations {

    private static final Parameter<String> SIZE = CableCalculations.SIZE;
    private static final Parameter<InsulationRating> INSULATION = Parameter.choice("insulation", InsulationRating.class, "temperature rating")
                .orElse("c105");
    private static final Parameter<Place> PLACE = Parameter.choice("place", Place.class, "whether any part lies in an engine space")
                .orElse("engine-space");
    private static final Parameter<Integer> TOGETHER = Parameter
            .wholeNumber("together", "current-carrying conductors together, itself included").orElse("1");
    private static final Parameter<Current> DEVICE = Parameter.of("device", Current.class, "rating of the overcurrent device");

    private AmpacityCalculations() {
    }

    /** Where a conductor runs. */
    enum Place {
        ENGINE_SPACE, OUTSIDE
    }

    static List<Calculation> all() {
        return List.of(ampacity33Cfr(), ampacityIso(), standardDevice(), alternatorDevice(), equipmentGround(), neutralGround(), dcGround(),
                terminalPull());
    }

    private static ConductorRun run(String size, InsulationRating insulation, Place place, int together) {
        return new ConductorRun(ConductorSize.valueOf(size), insulation, place == Place.ENGINE_SPACE, together);
    }

    private static Calculation ampacity33Cfr() {
        return Calculation.named("ampacity-33cfr183", "Permitted current by 33 CFR 183.425")
                .explained("The current a conductor may carry, and the largest overcurrent device, below 50 V and from 50 V up.")
                .takes(SIZE, INSULATION, PLACE, TOGETHER).by("Table 5 x note 1 (engine space) x note 2 (three or more together, from 50 V up)")
                .validFor("18 AWG to 4/0 AWG; a metric size counts as the largest gauge it contains; not for cranking conductors")
                .from(CableSources.AMPACITY_33_CFR).answers(in -> {
                    ConductorSize asked = ConductorSize.valueOf(in.get(SIZE));
                    String gauge = ConductorSeries.largest(ConductorSeries.AWG, asked.area()).orElse(asked).toString();
                    ConductorRun run = run(gauge, in.get(INSULATION), in.get(PLACE), in.get(TOGETHER));
                    Current from50 = Ampacity33Cfr183.allowedFrom50V(run);
                    return Answer.of("below 50 V", Ampacity33Cfr183.allowedBelow50V(run), "A").and("from 50 V", from50, "A").and("counted as", gauge)
                            .and("device limit below 50 V, literal", OvercurrentDevice.limitBelow50VLiteral(run), "A")
                            .and("device limit below 50 V, conservative", OvercurrentDevice.limitBelow50VConservative(run), "A")
                            .and("largest device from 50 V", device(OvercurrentDevice.largestFrom50V(from50)));
                });
    }

    private static Calculation ampacityIso() {
        return Calculation.named("ampacity-iso", "Permitted current by the ISO annex")
                .explained("The current a metric conductor may carry on a small craft; figures from memory.").takes(SIZE, INSULATION, PLACE, TOGETHER)
                .by("annex figure x engine space x bundle (four or more together)").validFor("0.75 to 150 mm2; refused outside")
                .from(CableSources.AMPACITY_ISO).answers(in -> {
                    Current allowed = AmpacityIso.allowed(run(in.get(SIZE), in.get(INSULATION), in.get(PLACE), in.get(TOGETHER)));
                    return Answer.of("permitted current", allowed, "A").and("largest device", device(OvercurrentDevice.largestIso(allowed)))
                            .warning("figures from memory: confirm them against the standard");
                });
    }

    private static Calculation standardDevice() {
        Parameter<Current> allowed = Parameter.of("permitted-current", Current.class, "permitted current of the conductor");
        return Calculation.named("standard-device", "Standard overcurrent device for a conductor")
                .explained("The largest standard rating from 50 V up by the next-size rule, and the largest that is not above the permitted current.")
                .takes(allowed).by("next standard size up to 150 %, else the size below").validFor("up to 400 A; refused above")
                .from(CableSources.OVERCURRENT_33_CFR)
                .answers(in -> Answer.of("by 33 CFR 183.455(c)(2)", device(OvercurrentDevice.largestFrom50V(in.get(allowed))))
                        .and("not above the permitted current", device(OvercurrentDevice.largestIso(in.get(allowed)))));
    }

    private static String device(Optional<Current> rating) {
        return rating.map(current -> Math.round(current.si()) + " A").orElse("none: even 15 A is too much");
    }

    private static Calculation alternatorDevice() {
        Parameter<Current> rated = Parameter.of("rated-current", Current.class, "rated current of the alternator");
        return Calculation.named("alternator-device", "Overcurrent device of a charging alternator")
                .explained("The most that the device of an alternator may be rated which does not limit itself.").takes(rated)
                .by("1.2 x rated current")
                .validFor("direct-current alternators").from(CableSources.ALTERNATOR_DEVICE)
                .answers(in -> Answer.of("device limit", OvercurrentDevice.alternatorLimit(in.get(rated)), "A"));
    }

    private static Calculation equipmentGround() {
        Parameter<Optional<String>> needed = phase("needed-phase", "phase conductor that the current asks for");
        Parameter<Optional<String>> fitted = phase("fitted-phase", "phase conductor in place, where it was made larger");
        return Calculation.named("equipment-ground", "Equipment grounding conductor")
                .explained("The least grounding conductor behind an overcurrent device.")
                .takes(DEVICE, needed, fitted).by("table by device rating; enlarged in proportion to enlarged phases").validFor("up to 800 A, copper")
                .from(CableSources.EQUIPMENT_GROUNDING).answers(in -> {
                    Optional<GroundingConductor.PhaseEnlargement> larger = in.get(needed).flatMap(less -> in.get(fitted)
                            .map(more -> new GroundingConductor.PhaseEnlargement(ConductorSize.valueOf(less), ConductorSize.valueOf(more))));
                    ConductorSize size = larger.map(phases -> GroundingConductor.equipment(in.get(DEVICE), phases))
                            .orElseGet(() -> GroundingConductor.equipment(in.get(DEVICE)));
                    return Answer.of("size", size.toString()).and("area", size.area(), "mm2", "cmil");
                });
    }

    private static Parameter<Optional<String>> phase(String name, String meaning) {
        return Parameter.oneOf(name, ConductorSeries.AWG.stream().map(ConductorSize::toString).toList(), meaning).optional();
    }

    private static Calculation neutralGround() {
        return Calculation.named("neutral-ground", "Conductor that grounds the neutral").explained("Its least size by the generator cable.")
                .takes(SIZE)
                .by("table by the size of the generator cable").validFor("any cable, copper").from(CableSources.NEUTRAL_GROUNDING).answers(in -> {
                    ConductorSize size = GroundingConductor.acNeutral(ConductorSize.valueOf(in.get(SIZE)));
                    return Answer.of("size", size.toString()).and("area", size.area(), "mm2", "cmil");
                });
    }

    private static Calculation dcGround() {
        return Calculation.named("dc-ground", "Conductor that grounds a direct-current system")
                .explained("Its least size by the largest supply conductor.")
                .takes(SIZE).by("as large as the largest supply conductor, at least 8 AWG").validFor("any conductor, copper")
                .from(CableSources.DC_GROUNDING).answers(in -> {
                    ConductorSize size = GroundingConductor.dcSystem(ConductorSize.valueOf(in.get(SIZE)));
                    return Answer.of("size", size.toString()).and("area", size.area(), "mm2", "cmil");
                });
    }

    private static Calculation terminalPull() {
        Parameter<String> gauge = Parameter.oneOf("gauge", ConductorSeries.AWG.stream().map(ConductorSize::toString).toList(),
                "size of the conductor");
        return Calculation.named("terminal-pull", "Pull test of a crimped terminal").explained("The force that a terminal holds for one minute.")
                .takes(gauge)
                .by("table by gauge").validFor("18 AWG to 4/0 AWG").from(CableSources.TERMINAL_PULL)
                .answers(in -> Answer.of("pull", TerminalPull.force(ConductorSize.valueOf(in.get(gauge))), "N", "lbf"));
    }
}
