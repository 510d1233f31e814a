/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.PipeFitting;
import garboard.model.WaterHoseKind;
import garboard.model.WaterHoseRun;
import garboard.model.WaterSection;

import garboard.quantity.Length;

import java.time.LocalDate;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Water Hose Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getSection <em>Section</em>}</li>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getLength <em>Length</em>}</li>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getClampsPerEnd <em>Clamps Per End</em>}</li>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getCollapseProof <em>Collapse Proof</em>}</li>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getFittings <em>Fittings</em>}</li>
 *   <li>{@link garboard.model.impl.WaterHoseRunImpl#getInstalledOn <em>Installed On</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WaterHoseRunImpl extends ItemImpl implements WaterHoseRun {
	/**
	 * The default value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected static final String NAME_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getName() <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getName()
	 * @generated
	 * @ordered
	 */
	protected String name = NAME_EDEFAULT;

	/**
	 * The default value of the '{@link #getSection() <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSection()
	 * @generated
	 * @ordered
	 */
	protected static final WaterSection SECTION_EDEFAULT = WaterSection.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getSection() <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSection()
	 * @generated
	 * @ordered
	 */
	protected WaterSection section = SECTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final WaterHoseKind KIND_EDEFAULT = WaterHoseKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected WaterHoseKind kind = KIND_EDEFAULT;

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
	 * The default value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected static final Length LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLength() <em>Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLength()
	 * @generated
	 * @ordered
	 */
	protected Length length = LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getClampsPerEnd() <em>Clamps Per End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClampsPerEnd()
	 * @generated
	 * @ordered
	 */
	protected static final Integer CLAMPS_PER_END_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClampsPerEnd() <em>Clamps Per End</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClampsPerEnd()
	 * @generated
	 * @ordered
	 */
	protected Integer clampsPerEnd = CLAMPS_PER_END_EDEFAULT;

	/**
	 * The default value of the '{@link #getCollapseProof() <em>Collapse Proof</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCollapseProof()
	 * @generated
	 * @ordered
	 */
	protected static final Answer COLLAPSE_PROOF_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getCollapseProof() <em>Collapse Proof</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCollapseProof()
	 * @generated
	 * @ordered
	 */
	protected Answer collapseProof = COLLAPSE_PROOF_EDEFAULT;

	/**
	 * The cached value of the '{@link #getFittings() <em>Fittings</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFittings()
	 * @generated
	 * @ordered
	 */
	protected EList<PipeFitting> fittings;

	/**
	 * The default value of the '{@link #getInstalledOn() <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate INSTALLED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getInstalledOn() <em>Installed On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInstalledOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate installedOn = INSTALLED_ON_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WaterHoseRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.WATER_HOSE_RUN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getName() {
		return name;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setName(String newName) {
		String oldName = name;
		name = newName;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_HOSE_RUN__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterSection getSection() {
		return section;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSection(WaterSection newSection) {
		WaterSection oldSection = section;
		section = newSection == null ? SECTION_EDEFAULT : newSection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_HOSE_RUN__SECTION, oldSection, section));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public WaterHoseKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(WaterHoseKind newKind) {
		WaterHoseKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_HOSE_RUN__KIND, oldKind, kind));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_HOSE_RUN__BORE, oldBore, bore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getLength() {
		return length;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLength(Length newLength) {
		Length oldLength = length;
		length = newLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_HOSE_RUN__LENGTH, oldLength, length));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getClampsPerEnd() {
		return clampsPerEnd;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClampsPerEnd(Integer newClampsPerEnd) {
		Integer oldClampsPerEnd = clampsPerEnd;
		clampsPerEnd = newClampsPerEnd;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_HOSE_RUN__CLAMPS_PER_END, oldClampsPerEnd, clampsPerEnd));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getCollapseProof() {
		return collapseProof;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCollapseProof(Answer newCollapseProof) {
		Answer oldCollapseProof = collapseProof;
		collapseProof = newCollapseProof == null ? COLLAPSE_PROOF_EDEFAULT : newCollapseProof;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_HOSE_RUN__COLLAPSE_PROOF, oldCollapseProof, collapseProof));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<PipeFitting> getFittings() {
		if (fittings == null) {
			fittings = new EObjectContainmentEList<PipeFitting>(PipeFitting.class, this, GarboardPackage.WATER_HOSE_RUN__FITTINGS);
		}
		return fittings;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getInstalledOn() {
		return installedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setInstalledOn(LocalDate newInstalledOn) {
		LocalDate oldInstalledOn = installedOn;
		installedOn = newInstalledOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.WATER_HOSE_RUN__INSTALLED_ON, oldInstalledOn, installedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.WATER_HOSE_RUN__FITTINGS:
				return ((InternalEList<?>)getFittings()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case GarboardPackage.WATER_HOSE_RUN__NAME:
				return getName();
			case GarboardPackage.WATER_HOSE_RUN__SECTION:
				return getSection();
			case GarboardPackage.WATER_HOSE_RUN__KIND:
				return getKind();
			case GarboardPackage.WATER_HOSE_RUN__BORE:
				return getBore();
			case GarboardPackage.WATER_HOSE_RUN__LENGTH:
				return getLength();
			case GarboardPackage.WATER_HOSE_RUN__CLAMPS_PER_END:
				return getClampsPerEnd();
			case GarboardPackage.WATER_HOSE_RUN__COLLAPSE_PROOF:
				return getCollapseProof();
			case GarboardPackage.WATER_HOSE_RUN__FITTINGS:
				return getFittings();
			case GarboardPackage.WATER_HOSE_RUN__INSTALLED_ON:
				return getInstalledOn();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case GarboardPackage.WATER_HOSE_RUN__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.WATER_HOSE_RUN__SECTION:
				setSection((WaterSection)newValue);
				return;
			case GarboardPackage.WATER_HOSE_RUN__KIND:
				setKind((WaterHoseKind)newValue);
				return;
			case GarboardPackage.WATER_HOSE_RUN__BORE:
				setBore((Length)newValue);
				return;
			case GarboardPackage.WATER_HOSE_RUN__LENGTH:
				setLength((Length)newValue);
				return;
			case GarboardPackage.WATER_HOSE_RUN__CLAMPS_PER_END:
				setClampsPerEnd((Integer)newValue);
				return;
			case GarboardPackage.WATER_HOSE_RUN__COLLAPSE_PROOF:
				setCollapseProof((Answer)newValue);
				return;
			case GarboardPackage.WATER_HOSE_RUN__FITTINGS:
				getFittings().clear();
				getFittings().addAll((Collection<? extends PipeFitting>)newValue);
				return;
			case GarboardPackage.WATER_HOSE_RUN__INSTALLED_ON:
				setInstalledOn((LocalDate)newValue);
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
			case GarboardPackage.WATER_HOSE_RUN__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.WATER_HOSE_RUN__SECTION:
				setSection(SECTION_EDEFAULT);
				return;
			case GarboardPackage.WATER_HOSE_RUN__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.WATER_HOSE_RUN__BORE:
				setBore(BORE_EDEFAULT);
				return;
			case GarboardPackage.WATER_HOSE_RUN__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case GarboardPackage.WATER_HOSE_RUN__CLAMPS_PER_END:
				setClampsPerEnd(CLAMPS_PER_END_EDEFAULT);
				return;
			case GarboardPackage.WATER_HOSE_RUN__COLLAPSE_PROOF:
				setCollapseProof(COLLAPSE_PROOF_EDEFAULT);
				return;
			case GarboardPackage.WATER_HOSE_RUN__FITTINGS:
				getFittings().clear();
				return;
			case GarboardPackage.WATER_HOSE_RUN__INSTALLED_ON:
				setInstalledOn(INSTALLED_ON_EDEFAULT);
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
			case GarboardPackage.WATER_HOSE_RUN__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.WATER_HOSE_RUN__SECTION:
				return section != SECTION_EDEFAULT;
			case GarboardPackage.WATER_HOSE_RUN__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.WATER_HOSE_RUN__BORE:
				return BORE_EDEFAULT == null ? bore != null : !BORE_EDEFAULT.equals(bore);
			case GarboardPackage.WATER_HOSE_RUN__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case GarboardPackage.WATER_HOSE_RUN__CLAMPS_PER_END:
				return CLAMPS_PER_END_EDEFAULT == null ? clampsPerEnd != null : !CLAMPS_PER_END_EDEFAULT.equals(clampsPerEnd);
			case GarboardPackage.WATER_HOSE_RUN__COLLAPSE_PROOF:
				return collapseProof != COLLAPSE_PROOF_EDEFAULT;
			case GarboardPackage.WATER_HOSE_RUN__FITTINGS:
				return fittings != null && !fittings.isEmpty();
			case GarboardPackage.WATER_HOSE_RUN__INSTALLED_ON:
				return INSTALLED_ON_EDEFAULT == null ? installedOn != null : !INSTALLED_ON_EDEFAULT.equals(installedOn);
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
		result.append(" (name: ");
		result.append(name);
		result.append(", section: ");
		result.append(section);
		result.append(", kind: ");
		result.append(kind);
		result.append(", bore: ");
		result.append(bore);
		result.append(", length: ");
		result.append(length);
		result.append(", clampsPerEnd: ");
		result.append(clampsPerEnd);
		result.append(", collapseProof: ");
		result.append(collapseProof);
		result.append(", installedOn: ");
		result.append(installedOn);
		result.append(')');
		return result.toString();
	}

} //WaterHoseRunImpl
