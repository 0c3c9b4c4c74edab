package cradlewright.ui.wizards;

import java.util.function.Function;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.jface.wizard.Wizard;
import org.eclipse.jface.wizard.WizardDialog;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens a wizard: that for a shop, a car or a dolly, as the word behind the name of this class in the plugin says. */
public final class Begin extends AbstractHandler implements IExecutableExtension {

    private Function<IWorkbenchWindow, Wizard> wizard = ShopWizard::new;

    @Override
    public void setInitializationData(IConfigurationElement element, String property, Object word) {
        wizard = switch (String.valueOf(word)) {
            case "shop" -> ShopWizard::new;
            case "car" -> CarWizard::new;
            case "dolly" -> DollyWizard::new;
            default -> throw new IllegalArgumentException("no wizard for " + word);
        };
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        IWorkbenchWindow window = HandlerUtil.getActiveWorkbenchWindowChecked(event);
        new WizardDialog(window.getShell(), wizard.apply(window)).open();
        return null;
    }
}
