// SPDX-License-Identifier: EPL-2.0
package garboard.practice.rawwater;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.HULL_PICK_UP__BORE;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE;
import static garboard.model.GarboardPackage.Literals.RAW_WATER_CIRCUIT__HOSES;
import static garboard.model.GarboardPackage.Literals.SEACOCK__BORE;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.WATER_HOSE_RUN__SECTION;
import static garboard.model.GarboardPackage.Literals.WATER_PUMP__INLET_BORE;
import static garboard.model.GarboardPackage.Literals.WATER_STRAINER__PORT_BORE;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.MakerLimits;
import garboard.model.RawWaterCircuit;
import garboard.physics.pipe.HoseSize;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.quantity.Length;

/** From the hull to the pump nothing is narrower than the pump's inlet. */
final class SuctionBoreChain {

    private SuctionBoreChain() {
    }

    static Check<RawWaterCircuit> check() {
        return Check.check("RAWWATER-BORE-CHAIN", RawWaterCircuit.class)
            .title("Nothing before the pump is narrower than its inlet")
            .why("One narrow fitting sets the suction of the whole line; the pump starves although the hose looks right.")
            .basis(Basis.commonPractice())
            .gravity(Gravity.DEFECT)
            .limit("hull fitting, seacock, strainer ports and suction hose at least as wide as the pump's inlet, or the maker's least bore")
            .needs(path(HULL_PICK_UP__BORE), path(SEACOCK__BORE), path(WATER_STRAINER__PORT_BORE),
                SuctionLine.hoses().then(WATER_HOSE_RUN__BORE))
            .uses(path(RAW_WATER_CIRCUIT__HOSES, WATER_HOSE_RUN__SECTION), path(MAKER_LIMITS__MINIMUM_RAW_WATER_HOSE_BORE))
            .needsWhen(s -> makersBore(s).isEmpty(), path(WATER_PUMP__INLET_BORE))
            .holds(s -> {
                Part narrowest = parts(s).stream().min(Comparator.comparing(Part::bore)).orElseThrow();
                return Comparison.atLeast("the narrowest part is " + narrowest.name() + " with " + Figures.both(narrowest.bore()),
                    narrowest.bore(), limit(s));
            })
            .remedy("Replace what is narrower than the pump's inlet", SuctionBoreChain::widen)
            .build();
    }

    /** One link of the chain and where its bore stands in the record. */
    private record Part(String name, Length bore, EObject owner, EStructuralFeature feature) {
    }

    private static List<Part> parts(Situation<RawWaterCircuit> s) {
        RawWaterCircuit circuit = s.subject();
        var parts = new ArrayList<Part>();
        parts.add(new Part("the hull fitting", circuit.getPickUp().getBore(), circuit.getPickUp(), HULL_PICK_UP__BORE));
        parts.add(new Part("the seacock", circuit.getSeacock().getBore(), circuit.getSeacock(), SEACOCK__BORE));
        parts.add(new Part("the strainer's port", circuit.getStrainer().getPortBore(), circuit.getStrainer(), WATER_STRAINER__PORT_BORE));
        SuctionLine.hoses(s.record())
            .forEach(hose -> parts.add(new Part("the suction hose", hose.getBore(), hose, WATER_HOSE_RUN__BORE)));
        return parts;
    }

    private static Optional<Remedy> widen(Situation<RawWaterCircuit> s) {
        Length limit = limit(s).value();
        return HoseSize.atLeast(limit).map(size -> {
            Length bore = size.bore().isLessThan(limit) ? limit : size.bore();
            List<Part> narrow = parts(s).stream().filter(part -> part.bore().isLessThan(limit)).toList();
            String names = String.join(", ", narrow.stream().map(Part::name).distinct().toList());
            Remedy remedy = Remedy.of("Fit " + size.name() + " (" + Figures.metric(bore) + ") for " + names);
            for (Part part : narrow) {
                remedy = remedy.setting(part.owner(), part.feature(), bore);
            }
            return remedy;
        });
    }

    private static Limit<Length> limit(Situation<RawWaterCircuit> s) {
        return MakersLimit.or(makersBore(s), () -> Limit.of(s.subject().getPump().getInletBore(), "bore of the pump's inlet"));
    }

    private static Optional<Length> makersBore(Situation<RawWaterCircuit> s) {
        return s.maker(MakerLimits::getMinimumRawWaterHoseBore);
    }
}
