/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.FittingMaterial;
import garboard.model.GarboardPackage;
import garboard.model.Seacock;
import garboard.model.ValveKind;

import garboard.quantity.Length;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Seacock</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.SeacockImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.SeacockImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link garboard.model.impl.SeacockImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.impl.SeacockImpl#getFullBore <em>Full Bore</em>}</li>
 *   <li>{@link garboard.model.impl.SeacockImpl#getLeverShowsState <em>Lever Shows State</em>}</li>
 *   <li>{@link garboard.model.impl.SeacockImpl#getReachableWithoutTools <em>Reachable Without Tools</em>}</li>
 *   <li>{@link garboard.model.impl.SeacockImpl#getCloseToHull <em>Close To Hull</em>}</li>
 *   <li>{@link garboard.model.impl.SeacockImpl#getStaticLoadMarked <em>Static Load Marked</em>}</li>
 *   <li>{@link garboard.model.impl.SeacockImpl#getWorksFreely <em>Works Freely</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SeacockImpl extends MinimalEObjectImpl.Container implements Seacock {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final ValveKind KIND_EDEFAULT = ValveKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected ValveKind kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final FittingMaterial MATERIAL_EDEFAULT = FittingMaterial.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected FittingMaterial material = MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getBore() <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBore() <em>Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBore()
	 * @generated
	 * @ordered
	 */
	protected Length bore = BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFullBore() <em>Full Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFullBore()
	 * @generated
	 * @ordered
	 */
	protected static final Answer FULL_BORE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getFullBore() <em>Full Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFullBore()
	 * @generated
	 * @ordered
	 */
	protected Answer fullBore = FULL_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getLeverShowsState() <em>Lever Shows State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeverShowsState()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LEVER_SHOWS_STATE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLeverShowsState() <em>Lever Shows State</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLeverShowsState()
	 * @generated
	 * @ordered
	 */
	protected Answer leverShowsState = LEVER_SHOWS_STATE_EDEFAULT;

	/**
	 * The default value of the '{@link #getReachableWithoutTools() <em>Reachable Without Tools</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReachableWithoutTools()
	 * @generated
	 * @ordered
	 */
	protected static final Answer REACHABLE_WITHOUT_TOOLS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getReachableWithoutTools() <em>Reachable Without Tools</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getReachableWithoutTools()
	 * @generated
	 * @ordered
	 */
	protected Answer reachableWithoutTools = REACHABLE_WITHOUT_TOOLS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCloseToHull() <em>Close To Hull</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCloseToHull()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CLOSE_TO_HULL_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getCloseToHull() <em>Close To Hull</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCloseToHull()
	 * @generated
	 * @ordered
	 */
	protected Answer closeToHull = CLOSE_TO_HULL_EDEFAULT;

	/**
	 * The default value of the '{@link #getStaticLoadMarked() <em>Static Load Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStaticLoadMarked()
	 * @generated
	 * @ordered
	 */
	protected static final Answer STATIC_LOAD_MARKED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getStaticLoadMarked() <em>Static Load Marked</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStaticLoadMarked()
	 * @generated
	 * @ordered
	 */
	protected Answer staticLoadMarked = STATIC_LOAD_MARKED_EDEFAULT;

	/**
	 * The default value of the '{@link #getWorksFreely() <em>Works Freely</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorksFreely()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WORKS_FREELY_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWorksFreely() <em>Works Freely</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWorksFreely()
	 * @generated
	 * @ordered
	 */
	protected Answer worksFreely = WORKS_FREELY_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SeacockImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.SEACOCK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ValveKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(ValveKind newKind) {
		ValveKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public FittingMaterial getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(FittingMaterial newMaterial) {
		FittingMaterial oldMaterial = material;
		material = newMaterial == null ? MATERIAL_EDEFAULT : newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBore() {
		return bore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBore(Length newBore) {
		Length oldBore = bore;
		bore = newBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__BORE, oldBore, bore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getFullBore() {
		return fullBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFullBore(Answer newFullBore) {
		Answer oldFullBore = fullBore;
		fullBore = newFullBore == null ? FULL_BORE_EDEFAULT : newFullBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__FULL_BORE, oldFullBore, fullBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLeverShowsState() {
		return leverShowsState;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLeverShowsState(Answer newLeverShowsState) {
		Answer oldLeverShowsState = leverShowsState;
		leverShowsState = newLeverShowsState == null ? LEVER_SHOWS_STATE_EDEFAULT : newLeverShowsState;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__LEVER_SHOWS_STATE, oldLeverShowsState, leverShowsState));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getReachableWithoutTools() {
		return reachableWithoutTools;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setReachableWithoutTools(Answer newReachableWithoutTools) {
		Answer oldReachableWithoutTools = reachableWithoutTools;
		reachableWithoutTools = newReachableWithoutTools == null ? REACHABLE_WITHOUT_TOOLS_EDEFAULT : newReachableWithoutTools;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__REACHABLE_WITHOUT_TOOLS, oldReachableWithoutTools, reachableWithoutTools));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getCloseToHull() {
		return closeToHull;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCloseToHull(Answer newCloseToHull) {
		Answer oldCloseToHull = closeToHull;
		closeToHull = newCloseToHull == null ? CLOSE_TO_HULL_EDEFAULT : newCloseToHull;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__CLOSE_TO_HULL, oldCloseToHull, closeToHull));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getStaticLoadMarked() {
		return staticLoadMarked;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStaticLoadMarked(Answer newStaticLoadMarked) {
		Answer oldStaticLoadMarked = staticLoadMarked;
		staticLoadMarked = newStaticLoadMarked == null ? STATIC_LOAD_MARKED_EDEFAULT : newStaticLoadMarked;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__STATIC_LOAD_MARKED, oldStaticLoadMarked, staticLoadMarked));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWorksFreely() {
		return worksFreely;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWorksFreely(Answer newWorksFreely) {
		Answer oldWorksFreely = worksFreely;
		worksFreely = newWorksFreely == null ? WORKS_FREELY_EDEFAULT : newWorksFreely;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SEACOCK__WORKS_FREELY, oldWorksFreely, worksFreely));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.SEACOCK__KIND:
				return getKind();
			case GarboardPackage.SEACOCK__MATERIAL:
				return getMaterial();
			case GarboardPackage.SEACOCK__BORE:
				return getBore();
			case GarboardPackage.SEACOCK__FULL_BORE:
				return getFullBore();
			case GarboardPackage.SEACOCK__LEVER_SHOWS_STATE:
				return getLeverShowsState();
			case GarboardPackage.SEACOCK__REACHABLE_WITHOUT_TOOLS:
				return getReachableWithoutTools();
			case GarboardPackage.SEACOCK__CLOSE_TO_HULL:
				return getCloseToHull();
			case GarboardPackage.SEACOCK__STATIC_LOAD_MARKED:
				return getStaticLoadMarked();
			case GarboardPackage.SEACOCK__WORKS_FREELY:
				return getWorksFreely();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.SEACOCK__KIND:
				setKind((ValveKind)newValue);
				return;
			case GarboardPackage.SEACOCK__MATERIAL:
				setMaterial((FittingMaterial)newValue);
				return;
			case GarboardPackage.SEACOCK__BORE:
				setBore((Length)newValue);
				return;
			case GarboardPackage.SEACOCK__FULL_BORE:
				setFullBore((Answer)newValue);
				return;
			case GarboardPackage.SEACOCK__LEVER_SHOWS_STATE:
				setLeverShowsState((Answer)newValue);
				return;
			case GarboardPackage.SEACOCK__REACHABLE_WITHOUT_TOOLS:
				setReachableWithoutTools((Answer)newValue);
				return;
			case GarboardPackage.SEACOCK__CLOSE_TO_HULL:
				setCloseToHull((Answer)newValue);
				return;
			case GarboardPackage.SEACOCK__STATIC_LOAD_MARKED:
				setStaticLoadMarked((Answer)newValue);
				return;
			case GarboardPackage.SEACOCK__WORKS_FREELY:
				setWorksFreely((Answer)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case GarboardPackage.SEACOCK__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.SEACOCK__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case GarboardPackage.SEACOCK__BORE:
				setBore(BORE_EDEFAULT);
				return;
			case GarboardPackage.SEACOCK__FULL_BORE:
				setFullBore(FULL_BORE_EDEFAULT);
				return;
			case GarboardPackage.SEACOCK__LEVER_SHOWS_STATE:
				setLeverShowsState(LEVER_SHOWS_STATE_EDEFAULT);
				return;
			case GarboardPackage.SEACOCK__REACHABLE_WITHOUT_TOOLS:
				setReachableWithoutTools(REACHABLE_WITHOUT_TOOLS_EDEFAULT);
				return;
			case GarboardPackage.SEACOCK__CLOSE_TO_HULL:
				setCloseToHull(CLOSE_TO_HULL_EDEFAULT);
				return;
			case GarboardPackage.SEACOCK__STATIC_LOAD_MARKED:
				setStaticLoadMarked(STATIC_LOAD_MARKED_EDEFAULT);
				return;
			case GarboardPackage.SEACOCK__WORKS_FREELY:
				setWorksFreely(WORKS_FREELY_EDEFAULT);
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case GarboardPackage.SEACOCK__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.SEACOCK__MATERIAL:
				return material != MATERIAL_EDEFAULT;
			case GarboardPackage.SEACOCK__BORE:
				return BORE_EDEFAULT == null ? bore != null : !BORE_EDEFAULT.equals(bore);
			case GarboardPackage.SEACOCK__FULL_BORE:
				return fullBore != FULL_BORE_EDEFAULT;
			case GarboardPackage.SEACOCK__LEVER_SHOWS_STATE:
				return leverShowsState != LEVER_SHOWS_STATE_EDEFAULT;
			case GarboardPackage.SEACOCK__REACHABLE_WITHOUT_TOOLS:
				return reachableWithoutTools != REACHABLE_WITHOUT_TOOLS_EDEFAULT;
			case GarboardPackage.SEACOCK__CLOSE_TO_HULL:
				return closeToHull != CLOSE_TO_HULL_EDEFAULT;
			case GarboardPackage.SEACOCK__STATIC_LOAD_MARKED:
				return staticLoadMarked != STATIC_LOAD_MARKED_EDEFAULT;
			case GarboardPackage.SEACOCK__WORKS_FREELY:
				return worksFreely != WORKS_FREELY_EDEFAULT;
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (kind: ");
		result.append(kind);
		result.append(", material: ");
		result.append(material);
		result.append(", bore: ");
		result.append(bore);
		result.append(", fullBore: ");
		result.append(fullBore);
		result.append(", leverShowsState: ");
		result.append(leverShowsState);
		result.append(", reachableWithoutTools: ");
		result.append(reachableWithoutTools);
		result.append(", closeToHull: ");
		result.append(closeToHull);
		result.append(", staticLoadMarked: ");
		result.append(staticLoadMarked);
		result.append(", worksFreely: ");
		result.append(worksFreely);
		result.append(')');
		return result.toString();
	}

} //SeacockImpl
