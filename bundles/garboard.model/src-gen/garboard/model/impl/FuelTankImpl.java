/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.FuelTank;
import garboard.model.GarboardPackage;
import garboard.model.Point;
import garboard.model.TankMaterial;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.Ratio;
import garboard.quantity.Volume;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Fuel Tank</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getName <em>Name</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getMaterial <em>Material</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getCapacity <em>Capacity</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getUsableFraction <em>Usable Fraction</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getTop <em>Top</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getBottomHeight <em>Bottom Height</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getLabelled <em>Labelled</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getTestPressureOnLabel <em>Test Pressure On Label</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getTestPressure <em>Test Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getOpeningsAtTop <em>Openings At Top</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getMovement <em>Movement</em>}</li>
 *   <li>{@link garboard.model.impl.FuelTankImpl#getSharedWithMainEngine <em>Shared With Main Engine</em>}</li>
 * </ul>
 *
 * @generated
 */
public class FuelTankImpl extends MinimalEObjectImpl.Container implements FuelTank {
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
	 * The default value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected static final TankMaterial MATERIAL_EDEFAULT = TankMaterial.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getMaterial() <em>Material</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMaterial()
	 * @generated
	 * @ordered
	 */
	protected TankMaterial material = MATERIAL_EDEFAULT;

	/**
	 * The default value of the '{@link #getCapacity() <em>Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCapacity()
	 * @generated
	 * @ordered
	 */
	protected static final Volume CAPACITY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCapacity() <em>Capacity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCapacity()
	 * @generated
	 * @ordered
	 */
	protected Volume capacity = CAPACITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getUsableFraction() <em>Usable Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsableFraction()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio USABLE_FRACTION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getUsableFraction() <em>Usable Fraction</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getUsableFraction()
	 * @generated
	 * @ordered
	 */
	protected Ratio usableFraction = USABLE_FRACTION_EDEFAULT;

	/**
	 * The cached value of the '{@link #getTop() <em>Top</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTop()
	 * @generated
	 * @ordered
	 */
	protected Point top;

	/**
	 * The default value of the '{@link #getBottomHeight() <em>Bottom Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBottomHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length BOTTOM_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBottomHeight() <em>Bottom Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBottomHeight()
	 * @generated
	 * @ordered
	 */
	protected Length bottomHeight = BOTTOM_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getLabelled() <em>Labelled</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabelled()
	 * @generated
	 * @ordered
	 */
	protected static final Answer LABELLED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getLabelled() <em>Labelled</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLabelled()
	 * @generated
	 * @ordered
	 */
	protected Answer labelled = LABELLED_EDEFAULT;

	/**
	 * The default value of the '{@link #getTestPressureOnLabel() <em>Test Pressure On Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestPressureOnLabel()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure TEST_PRESSURE_ON_LABEL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTestPressureOnLabel() <em>Test Pressure On Label</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestPressureOnLabel()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure testPressureOnLabel = TEST_PRESSURE_ON_LABEL_EDEFAULT;

	/**
	 * The default value of the '{@link #getTestPressure() <em>Test Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure TEST_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTestPressure() <em>Test Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure testPressure = TEST_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOpeningsAtTop() <em>Openings At Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpeningsAtTop()
	 * @generated
	 * @ordered
	 */
	protected static final Answer OPENINGS_AT_TOP_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getOpeningsAtTop() <em>Openings At Top</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOpeningsAtTop()
	 * @generated
	 * @ordered
	 */
	protected Answer openingsAtTop = OPENINGS_AT_TOP_EDEFAULT;

	/**
	 * The default value of the '{@link #getMovement() <em>Movement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMovement()
	 * @generated
	 * @ordered
	 */
	protected static final Length MOVEMENT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMovement() <em>Movement</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMovement()
	 * @generated
	 * @ordered
	 */
	protected Length movement = MOVEMENT_EDEFAULT;

	/**
	 * The default value of the '{@link #getSharedWithMainEngine() <em>Shared With Main Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSharedWithMainEngine()
	 * @generated
	 * @ordered
	 */
	protected static final Answer SHARED_WITH_MAIN_ENGINE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getSharedWithMainEngine() <em>Shared With Main Engine</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSharedWithMainEngine()
	 * @generated
	 * @ordered
	 */
	protected Answer sharedWithMainEngine = SHARED_WITH_MAIN_ENGINE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected FuelTankImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.FUEL_TANK;
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__NAME, oldName, name));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public TankMaterial getMaterial() {
		return material;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMaterial(TankMaterial newMaterial) {
		TankMaterial oldMaterial = material;
		material = newMaterial == null ? MATERIAL_EDEFAULT : newMaterial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__MATERIAL, oldMaterial, material));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Volume getCapacity() {
		return capacity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCapacity(Volume newCapacity) {
		Volume oldCapacity = capacity;
		capacity = newCapacity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__CAPACITY, oldCapacity, capacity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getUsableFraction() {
		return usableFraction;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setUsableFraction(Ratio newUsableFraction) {
		Ratio oldUsableFraction = usableFraction;
		usableFraction = newUsableFraction;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__USABLE_FRACTION, oldUsableFraction, usableFraction));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getTop() {
		return top;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetTop(Point newTop, NotificationChain msgs) {
		Point oldTop = top;
		top = newTop;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__TOP, oldTop, newTop);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTop(Point newTop) {
		if (newTop != top) {
			NotificationChain msgs = null;
			if (top != null)
				msgs = ((InternalEObject)top).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_TANK__TOP, null, msgs);
			if (newTop != null)
				msgs = ((InternalEObject)newTop).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.FUEL_TANK__TOP, null, msgs);
			msgs = basicSetTop(newTop, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__TOP, newTop, newTop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBottomHeight() {
		return bottomHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBottomHeight(Length newBottomHeight) {
		Length oldBottomHeight = bottomHeight;
		bottomHeight = newBottomHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__BOTTOM_HEIGHT, oldBottomHeight, bottomHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getLabelled() {
		return labelled;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLabelled(Answer newLabelled) {
		Answer oldLabelled = labelled;
		labelled = newLabelled == null ? LABELLED_EDEFAULT : newLabelled;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__LABELLED, oldLabelled, labelled));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getTestPressureOnLabel() {
		return testPressureOnLabel;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTestPressureOnLabel(GaugePressure newTestPressureOnLabel) {
		GaugePressure oldTestPressureOnLabel = testPressureOnLabel;
		testPressureOnLabel = newTestPressureOnLabel;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__TEST_PRESSURE_ON_LABEL, oldTestPressureOnLabel, testPressureOnLabel));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getTestPressure() {
		return testPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTestPressure(GaugePressure newTestPressure) {
		GaugePressure oldTestPressure = testPressure;
		testPressure = newTestPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__TEST_PRESSURE, oldTestPressure, testPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getOpeningsAtTop() {
		return openingsAtTop;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOpeningsAtTop(Answer newOpeningsAtTop) {
		Answer oldOpeningsAtTop = openingsAtTop;
		openingsAtTop = newOpeningsAtTop == null ? OPENINGS_AT_TOP_EDEFAULT : newOpeningsAtTop;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__OPENINGS_AT_TOP, oldOpeningsAtTop, openingsAtTop));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getMovement() {
		return movement;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMovement(Length newMovement) {
		Length oldMovement = movement;
		movement = newMovement;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__MOVEMENT, oldMovement, movement));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getSharedWithMainEngine() {
		return sharedWithMainEngine;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSharedWithMainEngine(Answer newSharedWithMainEngine) {
		Answer oldSharedWithMainEngine = sharedWithMainEngine;
		sharedWithMainEngine = newSharedWithMainEngine == null ? SHARED_WITH_MAIN_ENGINE_EDEFAULT : newSharedWithMainEngine;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.FUEL_TANK__SHARED_WITH_MAIN_ENGINE, oldSharedWithMainEngine, sharedWithMainEngine));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.FUEL_TANK__TOP:
				return basicSetTop(null, msgs);
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
			case GarboardPackage.FUEL_TANK__NAME:
				return getName();
			case GarboardPackage.FUEL_TANK__MATERIAL:
				return getMaterial();
			case GarboardPackage.FUEL_TANK__CAPACITY:
				return getCapacity();
			case GarboardPackage.FUEL_TANK__USABLE_FRACTION:
				return getUsableFraction();
			case GarboardPackage.FUEL_TANK__TOP:
				return getTop();
			case GarboardPackage.FUEL_TANK__BOTTOM_HEIGHT:
				return getBottomHeight();
			case GarboardPackage.FUEL_TANK__LABELLED:
				return getLabelled();
			case GarboardPackage.FUEL_TANK__TEST_PRESSURE_ON_LABEL:
				return getTestPressureOnLabel();
			case GarboardPackage.FUEL_TANK__TEST_PRESSURE:
				return getTestPressure();
			case GarboardPackage.FUEL_TANK__OPENINGS_AT_TOP:
				return getOpeningsAtTop();
			case GarboardPackage.FUEL_TANK__MOVEMENT:
				return getMovement();
			case GarboardPackage.FUEL_TANK__SHARED_WITH_MAIN_ENGINE:
				return getSharedWithMainEngine();
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
			case GarboardPackage.FUEL_TANK__NAME:
				setName((String)newValue);
				return;
			case GarboardPackage.FUEL_TANK__MATERIAL:
				setMaterial((TankMaterial)newValue);
				return;
			case GarboardPackage.FUEL_TANK__CAPACITY:
				setCapacity((Volume)newValue);
				return;
			case GarboardPackage.FUEL_TANK__USABLE_FRACTION:
				setUsableFraction((Ratio)newValue);
				return;
			case GarboardPackage.FUEL_TANK__TOP:
				setTop((Point)newValue);
				return;
			case GarboardPackage.FUEL_TANK__BOTTOM_HEIGHT:
				setBottomHeight((Length)newValue);
				return;
			case GarboardPackage.FUEL_TANK__LABELLED:
				setLabelled((Answer)newValue);
				return;
			case GarboardPackage.FUEL_TANK__TEST_PRESSURE_ON_LABEL:
				setTestPressureOnLabel((GaugePressure)newValue);
				return;
			case GarboardPackage.FUEL_TANK__TEST_PRESSURE:
				setTestPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.FUEL_TANK__OPENINGS_AT_TOP:
				setOpeningsAtTop((Answer)newValue);
				return;
			case GarboardPackage.FUEL_TANK__MOVEMENT:
				setMovement((Length)newValue);
				return;
			case GarboardPackage.FUEL_TANK__SHARED_WITH_MAIN_ENGINE:
				setSharedWithMainEngine((Answer)newValue);
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
			case GarboardPackage.FUEL_TANK__NAME:
				setName(NAME_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__MATERIAL:
				setMaterial(MATERIAL_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__CAPACITY:
				setCapacity(CAPACITY_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__USABLE_FRACTION:
				setUsableFraction(USABLE_FRACTION_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__TOP:
				setTop((Point)null);
				return;
			case GarboardPackage.FUEL_TANK__BOTTOM_HEIGHT:
				setBottomHeight(BOTTOM_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__LABELLED:
				setLabelled(LABELLED_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__TEST_PRESSURE_ON_LABEL:
				setTestPressureOnLabel(TEST_PRESSURE_ON_LABEL_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__TEST_PRESSURE:
				setTestPressure(TEST_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__OPENINGS_AT_TOP:
				setOpeningsAtTop(OPENINGS_AT_TOP_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__MOVEMENT:
				setMovement(MOVEMENT_EDEFAULT);
				return;
			case GarboardPackage.FUEL_TANK__SHARED_WITH_MAIN_ENGINE:
				setSharedWithMainEngine(SHARED_WITH_MAIN_ENGINE_EDEFAULT);
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
			case GarboardPackage.FUEL_TANK__NAME:
				return NAME_EDEFAULT == null ? name != null : !NAME_EDEFAULT.equals(name);
			case GarboardPackage.FUEL_TANK__MATERIAL:
				return material != MATERIAL_EDEFAULT;
			case GarboardPackage.FUEL_TANK__CAPACITY:
				return CAPACITY_EDEFAULT == null ? capacity != null : !CAPACITY_EDEFAULT.equals(capacity);
			case GarboardPackage.FUEL_TANK__USABLE_FRACTION:
				return USABLE_FRACTION_EDEFAULT == null ? usableFraction != null : !USABLE_FRACTION_EDEFAULT.equals(usableFraction);
			case GarboardPackage.FUEL_TANK__TOP:
				return top != null;
			case GarboardPackage.FUEL_TANK__BOTTOM_HEIGHT:
				return BOTTOM_HEIGHT_EDEFAULT == null ? bottomHeight != null : !BOTTOM_HEIGHT_EDEFAULT.equals(bottomHeight);
			case GarboardPackage.FUEL_TANK__LABELLED:
				return labelled != LABELLED_EDEFAULT;
			case GarboardPackage.FUEL_TANK__TEST_PRESSURE_ON_LABEL:
				return TEST_PRESSURE_ON_LABEL_EDEFAULT == null ? testPressureOnLabel != null : !TEST_PRESSURE_ON_LABEL_EDEFAULT.equals(testPressureOnLabel);
			case GarboardPackage.FUEL_TANK__TEST_PRESSURE:
				return TEST_PRESSURE_EDEFAULT == null ? testPressure != null : !TEST_PRESSURE_EDEFAULT.equals(testPressure);
			case GarboardPackage.FUEL_TANK__OPENINGS_AT_TOP:
				return openingsAtTop != OPENINGS_AT_TOP_EDEFAULT;
			case GarboardPackage.FUEL_TANK__MOVEMENT:
				return MOVEMENT_EDEFAULT == null ? movement != null : !MOVEMENT_EDEFAULT.equals(movement);
			case GarboardPackage.FUEL_TANK__SHARED_WITH_MAIN_ENGINE:
				return sharedWithMainEngine != SHARED_WITH_MAIN_ENGINE_EDEFAULT;
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
		result.append(", material: ");
		result.append(material);
		result.append(", capacity: ");
		result.append(capacity);
		result.append(", usableFraction: ");
		result.append(usableFraction);
		result.append(", bottomHeight: ");
		result.append(bottomHeight);
		result.append(", labelled: ");
		result.append(labelled);
		result.append(", testPressureOnLabel: ");
		result.append(testPressureOnLabel);
		result.append(", testPressure: ");
		result.append(testPressure);
		result.append(", openingsAtTop: ");
		result.append(openingsAtTop);
		result.append(", movement: ");
		result.append(movement);
		result.append(", sharedWithMainEngine: ");
		result.append(sharedWithMainEngine);
		result.append(')');
		return result.toString();
	}

} //FuelTankImpl
