// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD;
import static garboard.model.GarboardPackage.Literals.PIPE_FITTING__COUNT;
import static garboard.model.GarboardPackage.Literals.PIPE_FITTING__KIND;
import static garboard.model.GarboardPackage.Literals.POINT__Z;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__HOSES;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__FITTINGS;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__KIND;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.WATER_PUMP__POSITION;
import static garboard.model.GarboardPackage.Literals.WATER_PUMP__RATED_FLOW;

import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.RawWaterCircuit;
import garboard.model.WaterHoseRun;
import garboard.physics.pipe.HoseSize;
import garboard.physics.rawwater.Suction;
import garboard.practice.DesignAttitude;
import garboard.practice.Figures;
import garboard.practice.Sources;
import garboard.quantity.Length;

/** What the pump has to lift and what the suction line loses stay within the pump's reach. */
final class SuctionHead {

    private SuctionHead() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-SUCTION-HEAD", RawWaterCircuit.class)
            .title("Pump can draw the water: lift and line loss within reach")
            .why("Beyond its reach a pump primes late or not at all; a dry impeller is ruined within a minute.")
            .basis(Sources.GERR_CH_19)
            .gravity(Gravity.DANGER_TO_MACHINE)
            .limit("at most 1.22 m (4 ft) of water, or the maker's greatest suction head")
            .needs(path(WATER_PUMP__POSITION, POINT__Z), path(WATER_PUMP__RATED_FLOW),
                path(RAW_WATER_CIRCUIT__DESIGN_SEA_TEMPERATURE), SuctionLine.hoses().then(WATER_HOSE_RUN__BORE),
                SuctionLine.hoses().then(WATER_HOSE_RUN__LENGTH), SuctionLine.hoses().then(WATER_HOSE_RUN__KIND),
                SuctionLine.hoses().then(WATER_HOSE_RUN__FITTINGS).then(PIPE_FITTING__KIND),
                SuctionLine.hoses().then(WATER_HOSE_RUN__FITTINGS).then(PIPE_FITTING__COUNT))
            .uses(path(RAW_WATER_CIRCUIT__HOSES, WATER_HOSE_RUN__SECTION), path(MAKER_LIMITS__MAXIMUM_RAW_WATER_SUCTION_HEAD))
            .holds(s -> {
                Length head = SuctionLine.of(s.record()).head(lift(s));
                return Comparison.atMost(inWords(head, lift(s)), head, limit(s));
            })
            .remedy("Larger suction hose, shorter and straighter, or the pump lower", s -> widerHose(s).or(() -> lowerPump(s)))
            .build();
    }

    /** The smallest size of hose that brings the head within the limit. */
    private static Optional<Remedy> widerHose(Situation<RawWaterCircuit> s) {
        SuctionLine line = SuctionLine.of(s.record());
        return HoseSize.all().stream()
            .filter(size -> !line.headWithBoresOfAtLeast(size.bore(), lift(s)).isMoreThan(limit(s).value())).findFirst()
            .map(size -> {
                Length head = line.headWithBoresOfAtLeast(size.bore(), lift(s));
                Remedy remedy = Remedy.of("Fit suction hose of at least " + size.name() + " bore: "
                    + (head.si() > 0 ? "the head falls to " + Figures.both(head) : "then the water runs to the pump by itself"));
                for (WaterHoseRun hose : SuctionLine.hoses(s.record())) {
                    if (hose.getBore().isLessThan(size.bore())) {
                        remedy = remedy.setting(hose, WATER_HOSE_RUN__BORE, size.bore());
                    }
                }
                return remedy;
            });
    }

    private static Optional<Remedy> lowerPump(Situation<RawWaterCircuit> s) {
        Length losses = losses(SuctionLine.of(s.record()).head(lift(s)), lift(s));
        return Optional.of(Remedy.of("No hose is wide enough at this height: with this one the pump may stand "
            + DesignAttitude.heightInWords(Length.of(limit(s).value().si() - losses.si())) + "; lower it, and widen the hose"));
    }

    private static String inWords(Length head, Length lift) {
        String pump = head.si() > 0 ? "the pump draws " + Figures.both(head) + " of water" : "the water runs to the pump by itself";
        return pump + ": the pump stands " + DesignAttitude.heightInWords(lift) + ", and the suction line costs " + Figures.both(losses(head, lift));
    }

    private static Length losses(Length head, Length lift) {
        return Length.of(head.si() - lift.si());
    }

    private static Length lift(Situation<RawWaterCircuit> s) {
        return s.subject().getPump().getPosition().getZ();
    }

    private static Limit<Length> limit(Situation<RawWaterCircuit> s) {
        return Limit.makerOr(s.maker(MakerLimits::getMaximumRawWaterSuctionHead), Suction.GREATEST_HEAD_BY_GERR, "Gerr ch. 19");
    }
}
