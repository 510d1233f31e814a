// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.List;

import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.menu.MItem;
import org.eclipse.e4.ui.workbench.IPresentationEngine;
import org.eclipse.e4.ui.workbench.modeling.EModelService;

import garboard.workbench.look.Palette;

/** The icons of tools and menu entries: drawn in dark ink for light windows and in light ink for dark ones. */
final class ToolIcons {

    private static final String LIGHT = "/icons/";
    private static final String DARK = "/icons/dark/";

    private final MApplication application;
    private final EModelService models;

    ToolIcons(MApplication application, EModelService models) {
        this.application = application;
        this.models = models;
    }

    /** Puts the icons of a palette in place of those of the other. */
    void turn(Palette palette) {
        List<MItem> items = models.findElements(application, MItem.class, EModelService.ANYWHERE | EModelService.IN_MAIN_MENU,
            element -> element instanceof MItem item && item.getIconURI() != null);
        for (MItem item : items) {
            String light = item.getIconURI().replace(DARK, LIGHT);
            String icon = palette.dark() ? light.replace(LIGHT, DARK) : light;
            int name = icon.lastIndexOf('/') + 1;
            item.getTransientData().put(IPresentationEngine.DISABLED_ICON_IMAGE_KEY, icon.substring(0, name) + "disabled/" + icon.substring(name));
            item.setIconURI(icon);
        }
    }
}
