// SPDX-License-Identifier: EPL-2.0
package garboard.practice.ac;

import static garboard.checks.FeaturePath.path;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__EXCLUSIVE_WITH;
import static garboard.model.GarboardPackage.Literals.ELECTRICAL_LOAD__NAME;

import java.util.List;

import garboard.checks.Basis;
import garboard.checks.Check;
import garboard.checks.Comparison;
import garboard.checks.Gravity;
import garboard.model.ElectricalLoad;

/** The load that another one never runs together with is in the list; else the exclusion is lost and both count. */
final class ExclusionNamesALoad {

    private ExclusionNamesALoad() {
    }

    static Check<ElectricalLoad> check() {
        return Check.check("AC-LOAD-EXCLUSIVE", ElectricalLoad.class)
            .among(load -> !Exclusion.named(load).isEmpty(), path(ELECTRICAL_LOAD__EXCLUSIVE_WITH))
            .title("Load that never runs together with this one is in the list")
            .why("A name that fits no load excludes nothing, and the demand comes out too high.")
            .basis(Basis.derived("of loads that exclude each other only the largest counts; DDS 310-1 as quoted"))
            .gravity(Gravity.ADVICE)
            .limit("the name or the id of another load of the list")
            .needs(ELECTRICAL_LOAD__EXCLUSIVE_WITH)
            .uses(ELECTRICAL_LOAD__NAME)
            .holds(s -> {
                List<String> unknown = Exclusion.named(s.subject()).stream().filter(name -> s.record().getAcOutput().getLoads().stream()
                    .noneMatch(load -> load != s.subject() && Exclusion.means(name, load))).toList();
                return Comparison.holds(unknown.isEmpty() ? "never together with " + String.join(", ", Exclusion.named(s.subject()))
                    : "no other load is called \"" + String.join("\", \"", unknown) + "\"", unknown.isEmpty());
            })
            .remedy("Write the other load's name as it stands in the list")
            .build();
    }
}
