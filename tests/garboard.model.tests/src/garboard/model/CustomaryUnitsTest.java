// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Properties;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.junit.jupiter.api.Test;

import garboard.quantity.Kind;
import garboard.quantity.UnitSystem;

class CustomaryUnitsTest {

    @Test
    void everyQuantityIsOfferedInAUnitOfItsKindInBothSystems() {
        for (UnitSystem system : UnitSystem.values()) {
            CustomaryUnits units = CustomaryUnits.of(system);
            GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
                .flatMap(type -> type.getEAttributes().stream()).forEach(field -> Kind.ofType(field.getEAttributeType().getInstanceClass())
                    .ifPresent(kind -> assertThat(kind.units()).as(field.getName()).contains(units.unit(field))));
        }
    }

    @Test
    void everyListedFieldIsAQuantityOfTheModel() throws IOException {
        var listed = new Properties();
        try (var in = CustomaryUnits.class.getResourceAsStream("units.properties")) {
            listed.load(in);
        }
        assertThat(listed).isNotEmpty();
        for (String name : listed.stringPropertyNames()) {
            String[] parts = name.split("\\.");
            assertThat(GarboardPackage.eINSTANCE.getEClassifier(parts[0])).as(name).isInstanceOf(EClass.class);
            var feature = ((EClass) GarboardPackage.eINSTANCE.getEClassifier(parts[0])).getEStructuralFeature(parts[1]);
            assertThat(feature).as(name).isInstanceOf(EAttribute.class);
            assertThat(Kind.ofType(feature.getEType().getInstanceClass())).as(name).isPresent();
        }
    }

    @Test
    void aBeamIsOfferedInMetresOrFeetABoreInMillimetresOrInches() {
        assertThat(CustomaryUnits.of(UnitSystem.SI).unit(GarboardPackage.Literals.VESSEL__BEAM)).isEqualTo("m");
        assertThat(CustomaryUnits.of(UnitSystem.US).unit(GarboardPackage.Literals.VESSEL__BEAM)).isEqualTo("ft");
        assertThat(CustomaryUnits.of(UnitSystem.SI).unit(GarboardPackage.Literals.WATER_HOSE_RUN__BORE)).isEqualTo("mm");
    }
}
