/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.ExhaustBend;
import garboard.model.ExhaustHoseStandard;
import garboard.model.ExhaustSection;
import garboard.model.ExhaustSectionRun;
import garboard.model.GarboardPackage;

import garboard.quantity.Length;
import garboard.quantity.Temperature;

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
 * An implementation of the model object '<em><b>Exhaust Section Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getSection <em>Section</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getStandard <em>Standard</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getLength <em>Length</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getRise <em>Rise</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getFall <em>Fall</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getSlopesBackToMuffler <em>Slopes Back To Muffler</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getBends <em>Bends</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getClampsPerEnd <em>Clamps Per End</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getClampBandWidth <em>Clamp Band Width</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getSupportSpacing <em>Support Spacing</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getSagFree <em>Sag Free</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getInstalledOn <em>Installed On</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustSectionRunImpl#getGasTemperature <em>Gas Temperature</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ExhaustSectionRunImpl extends ItemImpl implements ExhaustSectionRun {
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
	protected static final ExhaustSection SECTION_EDEFAULT = ExhaustSection.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getSection() <em>Section</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSection()
	 * @generated
	 * @ordered
	 */
	protected ExhaustSection section = SECTION_EDEFAULT;

	/**
	 * The default value of the '{@link #getStandard() <em>Standard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStandard()
	 * @generated
	 * @ordered
	 */
	protected static final ExhaustHoseStandard STANDARD_EDEFAULT = ExhaustHoseStandard.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getStandard() <em>Standard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getStandard()
	 * @generated
	 * @ordered
	 */
	protected ExhaustHoseStandard standard = STANDARD_EDEFAULT;

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
	 * The default value of the '{@link #getRise() <em>Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRise()
	 * @generated
	 * @ordered
	 */
	protected static final Length RISE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRise() <em>Rise</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRise()
	 * @generated
	 * @ordered
	 */
	protected Length rise = RISE_EDEFAULT;

	/**
	 * The default value of the '{@link #getFall() <em>Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFall()
	 * @generated
	 * @ordered
	 */
	protected static final Length FALL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getFall() <em>Fall</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getFall()
	 * @generated
	 * @ordered
	 */
	protected Length fall = FALL_EDEFAULT;

	/**
	 * The default value of the '{@link #getSlopesBackToMuffler() <em>Slopes Back To Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlopesBackToMuffler()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SLOPES_BACK_TO_MUFFLER_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSlopesBackToMuffler() <em>Slopes Back To Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSlopesBackToMuffler()
	 * @generated
	 * @ordered
	 */
	protected Answer slopesBackToMuffler = SLOPES_BACK_TO_MUFFLER_EDEFAULT;

	/**
	 * The cached value of the '{@link #getBends() <em>Bends</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBends()
	 * @generated
	 * @ordered
	 */
	protected EList<ExhaustBend> bends;

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
	 * The default value of the '{@link #getClampBandWidth() <em>Clamp Band Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClampBandWidth()
	 * @generated
	 * @ordered
	 */
	protected static final Length CLAMP_BAND_WIDTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getClampBandWidth() <em>Clamp Band Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClampBandWidth()
	 * @generated
	 * @ordered
	 */
	protected Length clampBandWidth = CLAMP_BAND_WIDTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getSupportSpacing() <em>Support Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupportSpacing()
	 * @generated
	 * @ordered
	 */
	protected static final Length SUPPORT_SPACING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSupportSpacing() <em>Support Spacing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSupportSpacing()
	 * @generated
	 * @ordered
	 */
	protected Length supportSpacing = SUPPORT_SPACING_EDEFAULT;

	/**
	 * The default value of the '{@link #getSagFree() <em>Sag Free</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSagFree()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SAG_FREE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSagFree() <em>Sag Free</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSagFree()
	 * @generated
	 * @ordered
	 */
	protected Answer sagFree = SAG_FREE_EDEFAULT;

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
	 * The default value of the '{@link #getGasTemperature() <em>Gas Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature GAS_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGasTemperature() <em>Gas Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature gasTemperature = GAS_TEMPERATURE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ExhaustSectionRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.EXHAUST_SECTION_RUN;
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustSection getSection() {
		return section;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSection(ExhaustSection newSection) {
		ExhaustSection oldSection = section;
		section = newSection == null ? SECTION_EDEFAULT : newSection;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__SECTION, oldSection, section));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustHoseStandard getStandard() {
		return standard;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setStandard(ExhaustHoseStandard newStandard) {
		ExhaustHoseStandard oldStandard = standard;
		standard = newStandard == null ? STANDARD_EDEFAULT : newStandard;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__STANDARD, oldStandard, standard));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__BORE, oldBore, bore));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__LENGTH, oldLength, length));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getRise() {
		return rise;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRise(Length newRise) {
		Length oldRise = rise;
		rise = newRise;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__RISE, oldRise, rise));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getFall() {
		return fall;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFall(Length newFall) {
		Length oldFall = fall;
		fall = newFall;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__FALL, oldFall, fall));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSlopesBackToMuffler() {
		return slopesBackToMuffler;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSlopesBackToMuffler(Answer newSlopesBackToMuffler) {
		Answer oldSlopesBackToMuffler = slopesBackToMuffler;
		slopesBackToMuffler = newSlopesBackToMuffler == null ? SLOPES_BACK_TO_MUFFLER_EDEFAULT : newSlopesBackToMuffler;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER, oldSlopesBackToMuffler, slopesBackToMuffler));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ExhaustBend> getBends() {
		if (bends == null) {
			bends = new EObjectContainmentEList<ExhaustBend>(ExhaustBend.class, this, GarboardPackage.EXHAUST_SECTION_RUN__BENDS);
		}
		return bends;
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__CLAMPS_PER_END, oldClampsPerEnd, clampsPerEnd));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getClampBandWidth() {
		return clampBandWidth;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClampBandWidth(Length newClampBandWidth) {
		Length oldClampBandWidth = clampBandWidth;
		clampBandWidth = newClampBandWidth;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH, oldClampBandWidth, clampBandWidth));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getSupportSpacing() {
		return supportSpacing;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSupportSpacing(Length newSupportSpacing) {
		Length oldSupportSpacing = supportSpacing;
		supportSpacing = newSupportSpacing;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__SUPPORT_SPACING, oldSupportSpacing, supportSpacing));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSagFree() {
		return sagFree;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSagFree(Answer newSagFree) {
		Answer oldSagFree = sagFree;
		sagFree = newSagFree == null ? SAG_FREE_EDEFAULT : newSagFree;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__SAG_FREE, oldSagFree, sagFree));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__INSTALLED_ON, oldInstalledOn, installedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getGasTemperature() {
		return gasTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGasTemperature(Temperature newGasTemperature) {
		Temperature oldGasTemperature = gasTemperature;
		gasTemperature = newGasTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_SECTION_RUN__GAS_TEMPERATURE, oldGasTemperature, gasTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.EXHAUST_SECTION_RUN__BENDS:
				return ((InternalEList<?>)getBends()).basicRemove(otherEnd, msgs);
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
			case GarboardPackage.EXHAUST_SECTION_RUN__NAME:
				return getName();
			case GarboardPackage.EXHAUST_SECTION_RUN__SECTION:
				return getSection();
			case GarboardPackage.EXHAUST_SECTION_RUN__STANDARD:
				return getStandard();
			case GarboardPackage.EXHAUST_SECTION_RUN__BORE:
				return getBore();
			case GarboardPackage.EXHAUST_SECTION_RUN__LENGTH:
				return getLength();
			case GarboardPackage.EXHAUST_SECTION_RUN__RISE:
				return getRise();
			case GarboardPackage.EXHAUST_SECTION_RUN__FALL:
				return getFall();
			case GarboardPackage.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER:
				return getSlopesBackToMuffler();
			case GarboardPackage.EXHAUST_SECTION_RUN__BENDS:
				return getBends();
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMPS_PER_END:
				return getClampsPerEnd();
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH:
				return getClampBandWidth();
			case GarboardPackage.EXHAUST_SECTION_RUN__SUPPORT_SPACING:
				return getSupportSpacing();
			case GarboardPackage.EXHAUST_SECTION_RUN__SAG_FREE:
				return getSagFree();
			case GarboardPackage.EXHAUST_SECTION_RUN__INSTALLED_ON:
				return getInstalledOn();
			case GarboardPackage.EXHAUST_SECTION_RUN__GAS_TEMPERATURE:
				return getGasTemperature();
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
			case GarboardPackage.EXHAUST_SECTION_RUN__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__SECTION:
				setSection((ExhaustSection)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__STANDARD:
				setStandard((ExhaustHoseStandard)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__BORE:
				setBore((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__LENGTH:
				setLength((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__RISE:
				setRise((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__FALL:
				setFall((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER:
				setSlopesBackToMuffler((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__BENDS:
				getBends().clear();
				getBends().addAll((Collection<? extends ExhaustBend>)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMPS_PER_END:
				setClampsPerEnd((Integer)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH:
				setClampBandWidth((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__SUPPORT_SPACING:
				setSupportSpacing((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__SAG_FREE:
				setSagFree((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__INSTALLED_ON:
				setInstalledOn((LocalDate)newValue);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__GAS_TEMPERATURE:
				setGasTemperature((Temperature)newValue);
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
			case GarboardPackage.EXHAUST_SECTION_RUN__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__SECTION:
				setSection(SECTION_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__STANDARD:
				setStandard(STANDARD_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__BORE:
				setBore(BORE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__LENGTH:
				setLength(LENGTH_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__RISE:
				setRise(RISE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__FALL:
				setFall(FALL_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER:
				setSlopesBackToMuffler(SLOPES_BACK_TO_MUFFLER_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__BENDS:
				getBends().clear();
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMPS_PER_END:
				setClampsPerEnd(CLAMPS_PER_END_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH:
				setClampBandWidth(CLAMP_BAND_WIDTH_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__SUPPORT_SPACING:
				setSupportSpacing(SUPPORT_SPACING_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__SAG_FREE:
				setSagFree(SAG_FREE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__INSTALLED_ON:
				setInstalledOn(INSTALLED_ON_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_SECTION_RUN__GAS_TEMPERATURE:
				setGasTemperature(GAS_TEMPERATURE_EDEFAULT);
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
			case GarboardPackage.EXHAUST_SECTION_RUN__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.EXHAUST_SECTION_RUN__SECTION:
				return section != SECTION_EDEFAULT;
			case GarboardPackage.EXHAUST_SECTION_RUN__STANDARD:
				return standard != STANDARD_EDEFAULT;
			case GarboardPackage.EXHAUST_SECTION_RUN__BORE:
				return BORE_EDEFAULT == null ? bore != null : !BORE_EDEFAULT.equals(bore);
			case GarboardPackage.EXHAUST_SECTION_RUN__LENGTH:
				return LENGTH_EDEFAULT == null ? length != null : !LENGTH_EDEFAULT.equals(length);
			case GarboardPackage.EXHAUST_SECTION_RUN__RISE:
				return RISE_EDEFAULT == null ? rise != null : !RISE_EDEFAULT.equals(rise);
			case GarboardPackage.EXHAUST_SECTION_RUN__FALL:
				return FALL_EDEFAULT == null ? fall != null : !FALL_EDEFAULT.equals(fall);
			case GarboardPackage.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER:
				return slopesBackToMuffler != SLOPES_BACK_TO_MUFFLER_EDEFAULT;
			case GarboardPackage.EXHAUST_SECTION_RUN__BENDS:
				return bends != null && !bends.isEmpty();
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMPS_PER_END:
				return CLAMPS_PER_END_EDEFAULT == null ? clampsPerEnd != null : !CLAMPS_PER_END_EDEFAULT.equals(clampsPerEnd);
			case GarboardPackage.EXHAUST_SECTION_RUN__CLAMP_BAND_WIDTH:
				return CLAMP_BAND_WIDTH_EDEFAULT == null ? clampBandWidth != null : !CLAMP_BAND_WIDTH_EDEFAULT.equals(clampBandWidth);
			case GarboardPackage.EXHAUST_SECTION_RUN__SUPPORT_SPACING:
				return SUPPORT_SPACING_EDEFAULT == null ? supportSpacing != null : !SUPPORT_SPACING_EDEFAULT.equals(supportSpacing);
			case GarboardPackage.EXHAUST_SECTION_RUN__SAG_FREE:
				return sagFree != SAG_FREE_EDEFAULT;
			case GarboardPackage.EXHAUST_SECTION_RUN__INSTALLED_ON:
				return INSTALLED_ON_EDEFAULT == null ? installedOn != null : !INSTALLED_ON_EDEFAULT.equals(installedOn);
			case GarboardPackage.EXHAUST_SECTION_RUN__GAS_TEMPERATURE:
				return GAS_TEMPERATURE_EDEFAULT == null ? gasTemperature != null : !GAS_TEMPERATURE_EDEFAULT.equals(gasTemperature);
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
		result.append(", standard: ");
		result.append(standard);
		result.append(", bore: ");
		result.append(bore);
		result.append(", length: ");
		result.append(length);
		result.append(", rise: ");
		result.append(rise);
		result.append(", fall: ");
		result.append(fall);
		result.append(", slopesBackToMuffler: ");
		result.append(slopesBackToMuffler);
		result.append(", clampsPerEnd: ");
		result.append(clampsPerEnd);
		result.append(", clampBandWidth: ");
		result.append(clampBandWidth);
		result.append(", supportSpacing: ");
		result.append(supportSpacing);
		result.append(", sagFree: ");
		result.append(sagFree);
		result.append(", installedOn: ");
		result.append(installedOn);
		result.append(", gasTemperature: ");
		result.append(gasTemperature);
		result.append(')');
		return result.toString();
	}

} //ExhaustSectionRunImpl
