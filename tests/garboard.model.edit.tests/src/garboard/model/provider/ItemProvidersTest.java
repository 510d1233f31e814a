// SPDX-License-Identifier: EPL-2.0
package garboard.model.provider;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.emf.common.command.BasicCommandStack;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.AdapterFactoryEditingDomain;
import org.eclipse.emf.edit.provider.IItemPropertySource;
import org.junit.jupiter.api.Test;

import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage;
import garboard.model.Vessel;
import garboard.quantity.Length;

class ItemProvidersTest {

    private final GarboardItemProviderAdapterFactory providers = new GarboardItemProviderAdapterFactory();

    @Test
    void everyPartOfARecordCanBeEdited() {
        GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
            .filter(type -> !type.isAbstract()).forEach(type -> {
                EObject part = GarboardFactory.eINSTANCE.create(type);
                assertThat(providers.adapt(part, IItemPropertySource.class)).as(type.getName()).isInstanceOf(IItemPropertySource.class);
            });
    }

    @Test
    void anEditIsUndoneAndRedone() {
        var domain = new AdapterFactoryEditingDomain(providers, new BasicCommandStack());
        Vessel vessel = GarboardFactory.eINSTANCE.createVessel();
        vessel.setBeam(Length.valueOf("4 m"));
        domain.getCommandStack().execute(SetCommand.create(domain, vessel, GarboardPackage.Literals.VESSEL__BEAM, Length.valueOf("13 ft")));
        domain.getCommandStack().undo();
        assertThat(vessel.getBeam()).isEqualTo(Length.valueOf("4 m"));
        domain.getCommandStack().redo();
        assertThat(vessel.getBeam()).isEqualTo(Length.valueOf("13 ft"));
    }
}
