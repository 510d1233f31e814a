// SPDX-License-Identifier: EPL-2.0
package garboard.practice.exhaust;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__BORE;
import static garboard.model.GarboardPackage.Literals.EXHAUST_SECTION_RUN__LENGTH;
import static garboard.model.GarboardPackage.Literals.MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH;
import static garboard.model.GarboardPackage.Literals.MUFFLER__OUTLET_BORE;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.checks.Limit;
import garboard.checks.Remedy;
import garboard.checks.Situation;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSectionRun;
import garboard.model.MakerLimits;
import garboard.physics.exhaust.ExhaustBore;
import garboard.physics.pipe.HoseSize;
import garboard.practice.Figures;
import garboard.practice.MakersLimit;
import garboard.practice.Sources;
import garboard.quantity.Length;
import garboard.quantity.Ratio;

/** A long run from the muffler to the outlet is enlarged; a very long one has to be reckoned. */
final class ExhaustLengthToBore {

    /** Up to this many bores no enlargement is asked for. From memory. */
    private static final Ratio WITHOUT_ENLARGEMENT = Ratio.of(30);

    private ExhaustLengthToBore() {
    }

    static Check<ExhaustRun> check() {
        return Check.check("EXHAUST-LENGTH-BORE", ExhaustRun.class)
            .title("Run behind the muffler is not too long for its bore")
            .why("The loss of the run behind the muffler adds to the lift; both push back on the exhaust valves.")
            .basis(Sources.GERR.othersSay("60 bores, the bore enlarged by 20 %, are Gerr's; 30 bores without that are from memory"))
            .gravity(Gravity.DEFECT)
            .limit("from muffler to outlet at most 30 bores of the muffler's outlet, 60 with the bore enlarged by 20 %, or the maker's length")
            .needs(Sections.between(), Sections.in(Sections.BEHIND_MUFFLER).then(EXHAUST_SECTION_RUN__LENGTH))
            .uses(MAKER_LIMITS__MAXIMUM_EXHAUST_LENGTH)
            .needsWhen(s -> maker(s).isEmpty(), Sections.in(Sections.BEHIND_MUFFLER).then(EXHAUST_SECTION_RUN__BORE), path(MUFFLER__OUTLET_BORE))
            .holds(s -> Comparison.atMost("from the muffler to the outlet the run is " + Figures.both(length(s)) + " long", length(s), limit(s)))
            .remedy("Fit wider hose behind the muffler, or reckon and measure the back pressure", ExhaustLengthToBore::widen)
            .build();
    }

    private static List<ExhaustSectionRun> behind(Situation<ExhaustRun> s) {
        return Sections.of(s.subject(), Sections.BEHIND_MUFFLER);
    }

    private static Length length(Situation<ExhaustRun> s) {
        return Length.of(behind(s).stream().mapToDouble(run -> run.getLength().si()).sum());
    }

    private static Optional<Length> maker(Situation<ExhaustRun> s) {
        return s.maker(MakerLimits::getMaximumExhaustLength);
    }

    private static Length port(Situation<ExhaustRun> s) {
        return s.subject().getMuffler().getOutletBore();
    }

    private static Limit<Length> limit(Situation<ExhaustRun> s) {
        return MakersLimit.or(maker(s), () -> {
            Length narrowest = behind(s).stream().map(ExhaustSectionRun::getBore).min(Comparator.naturalOrder()).orElseThrow();
            // A tenth of a millimetre is no reason to call a hose too narrow.
            boolean enlarged = narrowest.si() >= ExhaustBore.enlargedForLongRun(port(s)).si() - 1e-4;
            return enlarged ? Limit.of(ExhaustBore.length(ExhaustBore.LONGEST_IN_BORES, port(s)), "Gerr: 60 bores, the bore enlarged by 20 %")
                : Limit.of(ExhaustBore.length(WITHOUT_ENLARGEMENT, port(s)), "from memory: 30 bores, the bore not enlarged");
        });
    }

    private static Optional<Remedy> widen(Situation<ExhaustRun> s) {
        if (maker(s).isPresent() || length(s).isMoreThan(ExhaustBore.length(ExhaustBore.LONGEST_IN_BORES, port(s)))) {
            return Optional.empty(); // no width of hose that a rule of thumb names would do: it has to be reckoned and measured
        }
        return HoseSize.atLeast(ExhaustBore.enlargedForLongRun(port(s))).map(size -> {
            Remedy remedy = Remedy.of("Fit hose of " + size.name() + " (" + Figures.metric(size.bore()) + ") bore from the muffler to the outlet");
            for (ExhaustSectionRun run : behind(s)) {
                remedy = remedy.setting(run, EXHAUST_SECTION_RUN__BORE, size.bore());
            }
            return remedy;
        });
    }
}
