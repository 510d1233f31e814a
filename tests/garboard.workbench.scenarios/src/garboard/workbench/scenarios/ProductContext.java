// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.scenarios;

import java.util.Map;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.Bundle;
import org.osgi.framework.FrameworkUtil;

import garboard.workbench.Desk;

/** What the launcher would tell the application: its arguments and the properties of the product in the plugin.xml of the window. */
final class ProductContext implements IApplicationContext {

    private final String[] arguments;
    private final IConfigurationElement product;

    ProductContext(String... arguments) {
        this.arguments = arguments.clone();
        this.product = RegistryFactory.getRegistry().getExtension("org.eclipse.core.runtime.products", "garboard.workbench.product")
            .getConfigurationElements()[0];
    }

    @Override
    public Map<?, ?> getArguments() {
        return Map.of(APPLICATION_ARGS, arguments);
    }

    @Override
    public void applicationRunning() {
        // Nobody shows a splash screen.
    }

    @Override
    public String getBrandingApplication() {
        return product.getAttribute("application");
    }

    @Override
    public String getBrandingName() {
        return product.getAttribute("name");
    }

    @Override
    public String getBrandingDescription() {
        return "";
    }

    @Override
    public String getBrandingId() {
        return "garboard.workbench.product";
    }

    @Override
    public String getBrandingProperty(String key) {
        for (IConfigurationElement property : product.getChildren("property")) {
            if (key.equals(property.getAttribute("name"))) {
                return property.getAttribute("value");
            }
        }
        return null;
    }

    @Override
    public Bundle getBrandingBundle() {
        return FrameworkUtil.getBundle(Desk.class);
    }

    @Override
    public void setResult(Object result, org.eclipse.equinox.app.IApplication application) {
        // The window gives its result by ending.
    }
}
