// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.look;

import java.net.URL;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Control;
import org.osgi.framework.FrameworkUtil;

/** The drawings in the folder {@code icons}: in dark ink for light windows, and in light ink for dark ones. */
public final class Icons {

    private Icons() {
    }

    /** {@return a drawing by its name, without ending; disposed with the control that shows it} */
    public static Image load(Control user, String name, Palette palette) {
        String path = "icons/" + (palette.dark() ? "dark/" : "") + name + ".svg";
        URL url = FrameworkUtil.getBundle(Icons.class).getEntry(path);
        if (url == null) {
            throw new IllegalArgumentException("There is no drawing " + path);
        }
        Image image = ImageDescriptor.createFromURL(url).createImage(user.getDisplay());
        user.addListener(SWT.Dispose, event -> image.dispose());
        return image;
    }
}
