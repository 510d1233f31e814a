/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.ExhaustCrest;
import garboard.model.ExhaustOutlet;
import garboard.model.ExhaustPoint;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSectionRun;
import garboard.model.GarboardPackage;
import garboard.model.Muffler;
import garboard.model.Riser;
import garboard.model.SeparatorDrain;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Exhaust Run</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getPath <em>Path</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getSections <em>Sections</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getMuffler <em>Muffler</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getRiser <em>Riser</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getCrest <em>Crest</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getOutlet <em>Outlet</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getSeparatorDrain <em>Separator Drain</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getTurbineOutletPortBore <em>Turbine Outlet Port Bore</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getOwnSystem <em>Own System</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getGasTight <em>Gas Tight</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getDryPartsLagged <em>Dry Parts Lagged</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getDryPartSurfaceTemperature <em>Dry Part Surface Temperature</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getWeightOnManifold <em>Weight On Manifold</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getTemperatureAlarm <em>Temperature Alarm</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getTemperatureAlarmSetting <em>Temperature Alarm Setting</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getTestTapFitted <em>Test Tap Fitted</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getTestTapDistance <em>Test Tap Distance</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getMeasuredBackPressure <em>Measured Back Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getMeasuredBackPressureLoad <em>Measured Back Pressure Load</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getBaselineBackPressure <em>Baseline Back Pressure</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getSilencerLoss <em>Silencer Loss</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getWaterFullLength <em>Water Full Length</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getBulkheadsSealed <em>Bulkheads Sealed</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getJointsAccessible <em>Joints Accessible</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustRunImpl#getClearOfCombustibles <em>Clear Of Combustibles</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ExhaustRunImpl extends MinimalEObjectImpl.Container implements ExhaustRun {
	/**
	 * The cached value of the '{@link #getPath() <em>Path</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected EList<ExhaustPoint> path;

	/**
	 * The cached value of the '{@link #getSections() <em>Sections</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSections()
	 * @generated
	 * @ordered
	 */
	protected EList<ExhaustSectionRun> sections;

	/**
	 * The cached value of the '{@link #getMuffler() <em>Muffler</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMuffler()
	 * @generated
	 * @ordered
	 */
	protected Muffler muffler;

	/**
	 * The cached value of the '{@link #getRiser() <em>Riser</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRiser()
	 * @generated
	 * @ordered
	 */
	protected Riser riser;

	/**
	 * The cached value of the '{@link #getCrest() <em>Crest</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCrest()
	 * @generated
	 * @ordered
	 */
	protected ExhaustCrest crest;

	/**
	 * The cached value of the '{@link #getOutlet() <em>Outlet</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOutlet()
	 * @generated
	 * @ordered
	 */
	protected ExhaustOutlet outlet;

	/**
	 * The cached value of the '{@link #getSeparatorDrain() <em>Separator Drain</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSeparatorDrain()
	 * @generated
	 * @ordered
	 */
	protected SeparatorDrain separatorDrain;

	/**
	 * The default value of the '{@link #getTurbineOutletPortBore() <em>Turbine Outlet Port Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurbineOutletPortBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length TURBINE_OUTLET_PORT_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTurbineOutletPortBore() <em>Turbine Outlet Port Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTurbineOutletPortBore()
	 * @generated
	 * @ordered
	 */
	protected Length turbineOutletPortBore = TURBINE_OUTLET_PORT_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getOwnSystem() <em>Own System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnSystem()
	 * @generated
	 * @ordered
	 */
	protected static final Answer OWN_SYSTEM_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getOwnSystem() <em>Own System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOwnSystem()
	 * @generated
	 * @ordered
	 */
	protected Answer ownSystem = OWN_SYSTEM_EDEFAULT;

	/**
	 * The default value of the '{@link #getGasTight() <em>Gas Tight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasTight()
	 * @generated
	 * @ordered
	 */
	protected static final Answer GAS_TIGHT_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getGasTight() <em>Gas Tight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGasTight()
	 * @generated
	 * @ordered
	 */
	protected Answer gasTight = GAS_TIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getDryPartsLagged() <em>Dry Parts Lagged</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryPartsLagged()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DRY_PARTS_LAGGED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDryPartsLagged() <em>Dry Parts Lagged</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryPartsLagged()
	 * @generated
	 * @ordered
	 */
	protected Answer dryPartsLagged = DRY_PARTS_LAGGED_EDEFAULT;

	/**
	 * The default value of the '{@link #getDryPartSurfaceTemperature() <em>Dry Part Surface Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryPartSurfaceTemperature()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature DRY_PART_SURFACE_TEMPERATURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDryPartSurfaceTemperature() <em>Dry Part Surface Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDryPartSurfaceTemperature()
	 * @generated
	 * @ordered
	 */
	protected Temperature dryPartSurfaceTemperature = DRY_PART_SURFACE_TEMPERATURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getWeightOnManifold() <em>Weight On Manifold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeightOnManifold()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WEIGHT_ON_MANIFOLD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWeightOnManifold() <em>Weight On Manifold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWeightOnManifold()
	 * @generated
	 * @ordered
	 */
	protected Answer weightOnManifold = WEIGHT_ON_MANIFOLD_EDEFAULT;

	/**
	 * The default value of the '{@link #getTemperatureAlarm() <em>Temperature Alarm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureAlarm()
	 * @generated
	 * @ordered
	 */
	protected static final Answer TEMPERATURE_ALARM_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getTemperatureAlarm() <em>Temperature Alarm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureAlarm()
	 * @generated
	 * @ordered
	 */
	protected Answer temperatureAlarm = TEMPERATURE_ALARM_EDEFAULT;

	/**
	 * The default value of the '{@link #getTemperatureAlarmSetting() <em>Temperature Alarm Setting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureAlarmSetting()
	 * @generated
	 * @ordered
	 */
	protected static final Temperature TEMPERATURE_ALARM_SETTING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTemperatureAlarmSetting() <em>Temperature Alarm Setting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTemperatureAlarmSetting()
	 * @generated
	 * @ordered
	 */
	protected Temperature temperatureAlarmSetting = TEMPERATURE_ALARM_SETTING_EDEFAULT;

	/**
	 * The default value of the '{@link #getTestTapFitted() <em>Test Tap Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestTapFitted()
	 * @generated
	 * @ordered
	 */
	protected static final Answer TEST_TAP_FITTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getTestTapFitted() <em>Test Tap Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestTapFitted()
	 * @generated
	 * @ordered
	 */
	protected Answer testTapFitted = TEST_TAP_FITTED_EDEFAULT;

	/**
	 * The default value of the '{@link #getTestTapDistance() <em>Test Tap Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestTapDistance()
	 * @generated
	 * @ordered
	 */
	protected static final Length TEST_TAP_DISTANCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTestTapDistance() <em>Test Tap Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTestTapDistance()
	 * @generated
	 * @ordered
	 */
	protected Length testTapDistance = TEST_TAP_DISTANCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredBackPressure() <em>Measured Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredBackPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure MEASURED_BACK_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredBackPressure() <em>Measured Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredBackPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure measuredBackPressure = MEASURED_BACK_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getMeasuredBackPressureLoad() <em>Measured Back Pressure Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredBackPressureLoad()
	 * @generated
	 * @ordered
	 */
	protected static final Ratio MEASURED_BACK_PRESSURE_LOAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getMeasuredBackPressureLoad() <em>Measured Back Pressure Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMeasuredBackPressureLoad()
	 * @generated
	 * @ordered
	 */
	protected Ratio measuredBackPressureLoad = MEASURED_BACK_PRESSURE_LOAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getBaselineBackPressure() <em>Baseline Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaselineBackPressure()
	 * @generated
	 * @ordered
	 */
	protected static final GaugePressure BASELINE_BACK_PRESSURE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBaselineBackPressure() <em>Baseline Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBaselineBackPressure()
	 * @generated
	 * @ordered
	 */
	protected GaugePressure baselineBackPressure = BASELINE_BACK_PRESSURE_EDEFAULT;

	/**
	 * The default value of the '{@link #getSilencerLoss() <em>Silencer Loss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSilencerLoss()
	 * @generated
	 * @ordered
	 */
	protected static final PressureDifference SILENCER_LOSS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSilencerLoss() <em>Silencer Loss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSilencerLoss()
	 * @generated
	 * @ordered
	 */
	protected PressureDifference silencerLoss = SILENCER_LOSS_EDEFAULT;

	/**
	 * The default value of the '{@link #getWaterFullLength() <em>Water Full Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterFullLength()
	 * @generated
	 * @ordered
	 */
	protected static final Answer WATER_FULL_LENGTH_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getWaterFullLength() <em>Water Full Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWaterFullLength()
	 * @generated
	 * @ordered
	 */
	protected Answer waterFullLength = WATER_FULL_LENGTH_EDEFAULT;

	/**
	 * The default value of the '{@link #getBulkheadsSealed() <em>Bulkheads Sealed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBulkheadsSealed()
	 * @generated
	 * @ordered
	 */
	protected static final Answer BULKHEADS_SEALED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getBulkheadsSealed() <em>Bulkheads Sealed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBulkheadsSealed()
	 * @generated
	 * @ordered
	 */
	protected Answer bulkheadsSealed = BULKHEADS_SEALED_EDEFAULT;

	/**
	 * The default value of the '{@link #getJointsAccessible() <em>Joints Accessible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJointsAccessible()
	 * @generated
	 * @ordered
	 */
	protected static final Answer JOINTS_ACCESSIBLE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getJointsAccessible() <em>Joints Accessible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getJointsAccessible()
	 * @generated
	 * @ordered
	 */
	protected Answer jointsAccessible = JOINTS_ACCESSIBLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getClearOfCombustibles() <em>Clear Of Combustibles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearOfCombustibles()
	 * @generated
	 * @ordered
	 */
	protected static final Answer CLEAR_OF_COMBUSTIBLES_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getClearOfCombustibles() <em>Clear Of Combustibles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getClearOfCombustibles()
	 * @generated
	 * @ordered
	 */
	protected Answer clearOfCombustibles = CLEAR_OF_COMBUSTIBLES_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ExhaustRunImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.EXHAUST_RUN;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ExhaustPoint> getPath() {
		if (path == null) {
			path = new EObjectContainmentEList<ExhaustPoint>(ExhaustPoint.class, this, GarboardPackage.EXHAUST_RUN__PATH);
		}
		return path;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ExhaustSectionRun> getSections() {
		if (sections == null) {
			sections = new EObjectContainmentEList<ExhaustSectionRun>(ExhaustSectionRun.class, this, GarboardPackage.EXHAUST_RUN__SECTIONS);
		}
		return sections;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Muffler getMuffler() {
		return muffler;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMuffler(Muffler newMuffler, NotificationChain msgs) {
		Muffler oldMuffler = muffler;
		muffler = newMuffler;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__MUFFLER, oldMuffler, newMuffler);
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
	public void setMuffler(Muffler newMuffler) {
		if (newMuffler != muffler) {
			NotificationChain msgs = null;
			if (muffler != null)
				msgs = ((InternalEObject)muffler).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__MUFFLER, null, msgs);
			if (newMuffler != null)
				msgs = ((InternalEObject)newMuffler).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__MUFFLER, null, msgs);
			msgs = basicSetMuffler(newMuffler, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__MUFFLER, newMuffler, newMuffler));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Riser getRiser() {
		return riser;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetRiser(Riser newRiser, NotificationChain msgs) {
		Riser oldRiser = riser;
		riser = newRiser;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__RISER, oldRiser, newRiser);
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
	public void setRiser(Riser newRiser) {
		if (newRiser != riser) {
			NotificationChain msgs = null;
			if (riser != null)
				msgs = ((InternalEObject)riser).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__RISER, null, msgs);
			if (newRiser != null)
				msgs = ((InternalEObject)newRiser).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__RISER, null, msgs);
			msgs = basicSetRiser(newRiser, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__RISER, newRiser, newRiser));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustCrest getCrest() {
		return crest;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetCrest(ExhaustCrest newCrest, NotificationChain msgs) {
		ExhaustCrest oldCrest = crest;
		crest = newCrest;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__CREST, oldCrest, newCrest);
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
	public void setCrest(ExhaustCrest newCrest) {
		if (newCrest != crest) {
			NotificationChain msgs = null;
			if (crest != null)
				msgs = ((InternalEObject)crest).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__CREST, null, msgs);
			if (newCrest != null)
				msgs = ((InternalEObject)newCrest).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__CREST, null, msgs);
			msgs = basicSetCrest(newCrest, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__CREST, newCrest, newCrest));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ExhaustOutlet getOutlet() {
		return outlet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetOutlet(ExhaustOutlet newOutlet, NotificationChain msgs) {
		ExhaustOutlet oldOutlet = outlet;
		outlet = newOutlet;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__OUTLET, oldOutlet, newOutlet);
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
	public void setOutlet(ExhaustOutlet newOutlet) {
		if (newOutlet != outlet) {
			NotificationChain msgs = null;
			if (outlet != null)
				msgs = ((InternalEObject)outlet).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__OUTLET, null, msgs);
			if (newOutlet != null)
				msgs = ((InternalEObject)newOutlet).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__OUTLET, null, msgs);
			msgs = basicSetOutlet(newOutlet, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__OUTLET, newOutlet, newOutlet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SeparatorDrain getSeparatorDrain() {
		return separatorDrain;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetSeparatorDrain(SeparatorDrain newSeparatorDrain, NotificationChain msgs) {
		SeparatorDrain oldSeparatorDrain = separatorDrain;
		separatorDrain = newSeparatorDrain;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN, oldSeparatorDrain, newSeparatorDrain);
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
	public void setSeparatorDrain(SeparatorDrain newSeparatorDrain) {
		if (newSeparatorDrain != separatorDrain) {
			NotificationChain msgs = null;
			if (separatorDrain != null)
				msgs = ((InternalEObject)separatorDrain).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN, null, msgs);
			if (newSeparatorDrain != null)
				msgs = ((InternalEObject)newSeparatorDrain).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN, null, msgs);
			msgs = basicSetSeparatorDrain(newSeparatorDrain, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN, newSeparatorDrain, newSeparatorDrain));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getTurbineOutletPortBore() {
		return turbineOutletPortBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTurbineOutletPortBore(Length newTurbineOutletPortBore) {
		Length oldTurbineOutletPortBore = turbineOutletPortBore;
		turbineOutletPortBore = newTurbineOutletPortBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE, oldTurbineOutletPortBore, turbineOutletPortBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getOwnSystem() {
		return ownSystem;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOwnSystem(Answer newOwnSystem) {
		Answer oldOwnSystem = ownSystem;
		ownSystem = newOwnSystem == null ? OWN_SYSTEM_EDEFAULT : newOwnSystem;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__OWN_SYSTEM, oldOwnSystem, ownSystem));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getGasTight() {
		return gasTight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGasTight(Answer newGasTight) {
		Answer oldGasTight = gasTight;
		gasTight = newGasTight == null ? GAS_TIGHT_EDEFAULT : newGasTight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__GAS_TIGHT, oldGasTight, gasTight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDryPartsLagged() {
		return dryPartsLagged;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDryPartsLagged(Answer newDryPartsLagged) {
		Answer oldDryPartsLagged = dryPartsLagged;
		dryPartsLagged = newDryPartsLagged == null ? DRY_PARTS_LAGGED_EDEFAULT : newDryPartsLagged;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__DRY_PARTS_LAGGED, oldDryPartsLagged, dryPartsLagged));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getDryPartSurfaceTemperature() {
		return dryPartSurfaceTemperature;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDryPartSurfaceTemperature(Temperature newDryPartSurfaceTemperature) {
		Temperature oldDryPartSurfaceTemperature = dryPartSurfaceTemperature;
		dryPartSurfaceTemperature = newDryPartSurfaceTemperature;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE, oldDryPartSurfaceTemperature, dryPartSurfaceTemperature));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWeightOnManifold() {
		return weightOnManifold;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWeightOnManifold(Answer newWeightOnManifold) {
		Answer oldWeightOnManifold = weightOnManifold;
		weightOnManifold = newWeightOnManifold == null ? WEIGHT_ON_MANIFOLD_EDEFAULT : newWeightOnManifold;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__WEIGHT_ON_MANIFOLD, oldWeightOnManifold, weightOnManifold));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getTemperatureAlarm() {
		return temperatureAlarm;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTemperatureAlarm(Answer newTemperatureAlarm) {
		Answer oldTemperatureAlarm = temperatureAlarm;
		temperatureAlarm = newTemperatureAlarm == null ? TEMPERATURE_ALARM_EDEFAULT : newTemperatureAlarm;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM, oldTemperatureAlarm, temperatureAlarm));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Temperature getTemperatureAlarmSetting() {
		return temperatureAlarmSetting;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTemperatureAlarmSetting(Temperature newTemperatureAlarmSetting) {
		Temperature oldTemperatureAlarmSetting = temperatureAlarmSetting;
		temperatureAlarmSetting = newTemperatureAlarmSetting;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM_SETTING, oldTemperatureAlarmSetting, temperatureAlarmSetting));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getTestTapFitted() {
		return testTapFitted;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTestTapFitted(Answer newTestTapFitted) {
		Answer oldTestTapFitted = testTapFitted;
		testTapFitted = newTestTapFitted == null ? TEST_TAP_FITTED_EDEFAULT : newTestTapFitted;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__TEST_TAP_FITTED, oldTestTapFitted, testTapFitted));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getTestTapDistance() {
		return testTapDistance;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTestTapDistance(Length newTestTapDistance) {
		Length oldTestTapDistance = testTapDistance;
		testTapDistance = newTestTapDistance;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__TEST_TAP_DISTANCE, oldTestTapDistance, testTapDistance));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getMeasuredBackPressure() {
		return measuredBackPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredBackPressure(GaugePressure newMeasuredBackPressure) {
		GaugePressure oldMeasuredBackPressure = measuredBackPressure;
		measuredBackPressure = newMeasuredBackPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE, oldMeasuredBackPressure, measuredBackPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Ratio getMeasuredBackPressureLoad() {
		return measuredBackPressureLoad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMeasuredBackPressureLoad(Ratio newMeasuredBackPressureLoad) {
		Ratio oldMeasuredBackPressureLoad = measuredBackPressureLoad;
		measuredBackPressureLoad = newMeasuredBackPressureLoad;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD, oldMeasuredBackPressureLoad, measuredBackPressureLoad));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public GaugePressure getBaselineBackPressure() {
		return baselineBackPressure;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBaselineBackPressure(GaugePressure newBaselineBackPressure) {
		GaugePressure oldBaselineBackPressure = baselineBackPressure;
		baselineBackPressure = newBaselineBackPressure;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__BASELINE_BACK_PRESSURE, oldBaselineBackPressure, baselineBackPressure));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PressureDifference getSilencerLoss() {
		return silencerLoss;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSilencerLoss(PressureDifference newSilencerLoss) {
		PressureDifference oldSilencerLoss = silencerLoss;
		silencerLoss = newSilencerLoss;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__SILENCER_LOSS, oldSilencerLoss, silencerLoss));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getWaterFullLength() {
		return waterFullLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWaterFullLength(Answer newWaterFullLength) {
		Answer oldWaterFullLength = waterFullLength;
		waterFullLength = newWaterFullLength == null ? WATER_FULL_LENGTH_EDEFAULT : newWaterFullLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__WATER_FULL_LENGTH, oldWaterFullLength, waterFullLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getBulkheadsSealed() {
		return bulkheadsSealed;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBulkheadsSealed(Answer newBulkheadsSealed) {
		Answer oldBulkheadsSealed = bulkheadsSealed;
		bulkheadsSealed = newBulkheadsSealed == null ? BULKHEADS_SEALED_EDEFAULT : newBulkheadsSealed;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__BULKHEADS_SEALED, oldBulkheadsSealed, bulkheadsSealed));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getJointsAccessible() {
		return jointsAccessible;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setJointsAccessible(Answer newJointsAccessible) {
		Answer oldJointsAccessible = jointsAccessible;
		jointsAccessible = newJointsAccessible == null ? JOINTS_ACCESSIBLE_EDEFAULT : newJointsAccessible;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__JOINTS_ACCESSIBLE, oldJointsAccessible, jointsAccessible));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getClearOfCombustibles() {
		return clearOfCombustibles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setClearOfCombustibles(Answer newClearOfCombustibles) {
		Answer oldClearOfCombustibles = clearOfCombustibles;
		clearOfCombustibles = newClearOfCombustibles == null ? CLEAR_OF_COMBUSTIBLES_EDEFAULT : newClearOfCombustibles;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES, oldClearOfCombustibles, clearOfCombustibles));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.EXHAUST_RUN__PATH:
				return ((InternalEList<?>)getPath()).basicRemove(otherEnd, msgs);
			case GarboardPackage.EXHAUST_RUN__SECTIONS:
				return ((InternalEList<?>)getSections()).basicRemove(otherEnd, msgs);
			case GarboardPackage.EXHAUST_RUN__MUFFLER:
				return basicSetMuffler(null, msgs);
			case GarboardPackage.EXHAUST_RUN__RISER:
				return basicSetRiser(null, msgs);
			case GarboardPackage.EXHAUST_RUN__CREST:
				return basicSetCrest(null, msgs);
			case GarboardPackage.EXHAUST_RUN__OUTLET:
				return basicSetOutlet(null, msgs);
			case GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN:
				return basicSetSeparatorDrain(null, msgs);
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
			case GarboardPackage.EXHAUST_RUN__PATH:
				return getPath();
			case GarboardPackage.EXHAUST_RUN__SECTIONS:
				return getSections();
			case GarboardPackage.EXHAUST_RUN__MUFFLER:
				return getMuffler();
			case GarboardPackage.EXHAUST_RUN__RISER:
				return getRiser();
			case GarboardPackage.EXHAUST_RUN__CREST:
				return getCrest();
			case GarboardPackage.EXHAUST_RUN__OUTLET:
				return getOutlet();
			case GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN:
				return getSeparatorDrain();
			case GarboardPackage.EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE:
				return getTurbineOutletPortBore();
			case GarboardPackage.EXHAUST_RUN__OWN_SYSTEM:
				return getOwnSystem();
			case GarboardPackage.EXHAUST_RUN__GAS_TIGHT:
				return getGasTight();
			case GarboardPackage.EXHAUST_RUN__DRY_PARTS_LAGGED:
				return getDryPartsLagged();
			case GarboardPackage.EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE:
				return getDryPartSurfaceTemperature();
			case GarboardPackage.EXHAUST_RUN__WEIGHT_ON_MANIFOLD:
				return getWeightOnManifold();
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM:
				return getTemperatureAlarm();
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM_SETTING:
				return getTemperatureAlarmSetting();
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_FITTED:
				return getTestTapFitted();
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_DISTANCE:
				return getTestTapDistance();
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE:
				return getMeasuredBackPressure();
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD:
				return getMeasuredBackPressureLoad();
			case GarboardPackage.EXHAUST_RUN__BASELINE_BACK_PRESSURE:
				return getBaselineBackPressure();
			case GarboardPackage.EXHAUST_RUN__SILENCER_LOSS:
				return getSilencerLoss();
			case GarboardPackage.EXHAUST_RUN__WATER_FULL_LENGTH:
				return getWaterFullLength();
			case GarboardPackage.EXHAUST_RUN__BULKHEADS_SEALED:
				return getBulkheadsSealed();
			case GarboardPackage.EXHAUST_RUN__JOINTS_ACCESSIBLE:
				return getJointsAccessible();
			case GarboardPackage.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES:
				return getClearOfCombustibles();
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
			case GarboardPackage.EXHAUST_RUN__PATH:
				getPath().clear();
				getPath().addAll((Collection<? extends ExhaustPoint>)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__SECTIONS:
				getSections().clear();
				getSections().addAll((Collection<? extends ExhaustSectionRun>)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__MUFFLER:
				setMuffler((Muffler)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__RISER:
				setRiser((Riser)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__CREST:
				setCrest((ExhaustCrest)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__OUTLET:
				setOutlet((ExhaustOutlet)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN:
				setSeparatorDrain((SeparatorDrain)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE:
				setTurbineOutletPortBore((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__OWN_SYSTEM:
				setOwnSystem((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__GAS_TIGHT:
				setGasTight((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__DRY_PARTS_LAGGED:
				setDryPartsLagged((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE:
				setDryPartSurfaceTemperature((Temperature)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__WEIGHT_ON_MANIFOLD:
				setWeightOnManifold((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM:
				setTemperatureAlarm((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM_SETTING:
				setTemperatureAlarmSetting((Temperature)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_FITTED:
				setTestTapFitted((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_DISTANCE:
				setTestTapDistance((Length)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE:
				setMeasuredBackPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD:
				setMeasuredBackPressureLoad((Ratio)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__BASELINE_BACK_PRESSURE:
				setBaselineBackPressure((GaugePressure)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__SILENCER_LOSS:
				setSilencerLoss((PressureDifference)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__WATER_FULL_LENGTH:
				setWaterFullLength((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__BULKHEADS_SEALED:
				setBulkheadsSealed((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__JOINTS_ACCESSIBLE:
				setJointsAccessible((Answer)newValue);
				return;
			case GarboardPackage.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES:
				setClearOfCombustibles((Answer)newValue);
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
			case GarboardPackage.EXHAUST_RUN__PATH:
				getPath().clear();
				return;
			case GarboardPackage.EXHAUST_RUN__SECTIONS:
				getSections().clear();
				return;
			case GarboardPackage.EXHAUST_RUN__MUFFLER:
				setMuffler((Muffler)null);
				return;
			case GarboardPackage.EXHAUST_RUN__RISER:
				setRiser((Riser)null);
				return;
			case GarboardPackage.EXHAUST_RUN__CREST:
				setCrest((ExhaustCrest)null);
				return;
			case GarboardPackage.EXHAUST_RUN__OUTLET:
				setOutlet((ExhaustOutlet)null);
				return;
			case GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN:
				setSeparatorDrain((SeparatorDrain)null);
				return;
			case GarboardPackage.EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE:
				setTurbineOutletPortBore(TURBINE_OUTLET_PORT_BORE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__OWN_SYSTEM:
				setOwnSystem(OWN_SYSTEM_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__GAS_TIGHT:
				setGasTight(GAS_TIGHT_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__DRY_PARTS_LAGGED:
				setDryPartsLagged(DRY_PARTS_LAGGED_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE:
				setDryPartSurfaceTemperature(DRY_PART_SURFACE_TEMPERATURE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__WEIGHT_ON_MANIFOLD:
				setWeightOnManifold(WEIGHT_ON_MANIFOLD_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM:
				setTemperatureAlarm(TEMPERATURE_ALARM_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM_SETTING:
				setTemperatureAlarmSetting(TEMPERATURE_ALARM_SETTING_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_FITTED:
				setTestTapFitted(TEST_TAP_FITTED_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_DISTANCE:
				setTestTapDistance(TEST_TAP_DISTANCE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE:
				setMeasuredBackPressure(MEASURED_BACK_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD:
				setMeasuredBackPressureLoad(MEASURED_BACK_PRESSURE_LOAD_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__BASELINE_BACK_PRESSURE:
				setBaselineBackPressure(BASELINE_BACK_PRESSURE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__SILENCER_LOSS:
				setSilencerLoss(SILENCER_LOSS_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__WATER_FULL_LENGTH:
				setWaterFullLength(WATER_FULL_LENGTH_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__BULKHEADS_SEALED:
				setBulkheadsSealed(BULKHEADS_SEALED_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__JOINTS_ACCESSIBLE:
				setJointsAccessible(JOINTS_ACCESSIBLE_EDEFAULT);
				return;
			case GarboardPackage.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES:
				setClearOfCombustibles(CLEAR_OF_COMBUSTIBLES_EDEFAULT);
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
			case GarboardPackage.EXHAUST_RUN__PATH:
				return path != null && !path.isEmpty();
			case GarboardPackage.EXHAUST_RUN__SECTIONS:
				return sections != null && !sections.isEmpty();
			case GarboardPackage.EXHAUST_RUN__MUFFLER:
				return muffler != null;
			case GarboardPackage.EXHAUST_RUN__RISER:
				return riser != null;
			case GarboardPackage.EXHAUST_RUN__CREST:
				return crest != null;
			case GarboardPackage.EXHAUST_RUN__OUTLET:
				return outlet != null;
			case GarboardPackage.EXHAUST_RUN__SEPARATOR_DRAIN:
				return separatorDrain != null;
			case GarboardPackage.EXHAUST_RUN__TURBINE_OUTLET_PORT_BORE:
				return TURBINE_OUTLET_PORT_BORE_EDEFAULT == null ? turbineOutletPortBore != null : !TURBINE_OUTLET_PORT_BORE_EDEFAULT.equals(turbineOutletPortBore);
			case GarboardPackage.EXHAUST_RUN__OWN_SYSTEM:
				return ownSystem != OWN_SYSTEM_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__GAS_TIGHT:
				return gasTight != GAS_TIGHT_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__DRY_PARTS_LAGGED:
				return dryPartsLagged != DRY_PARTS_LAGGED_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__DRY_PART_SURFACE_TEMPERATURE:
				return DRY_PART_SURFACE_TEMPERATURE_EDEFAULT == null ? dryPartSurfaceTemperature != null : !DRY_PART_SURFACE_TEMPERATURE_EDEFAULT.equals(dryPartSurfaceTemperature);
			case GarboardPackage.EXHAUST_RUN__WEIGHT_ON_MANIFOLD:
				return weightOnManifold != WEIGHT_ON_MANIFOLD_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM:
				return temperatureAlarm != TEMPERATURE_ALARM_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__TEMPERATURE_ALARM_SETTING:
				return TEMPERATURE_ALARM_SETTING_EDEFAULT == null ? temperatureAlarmSetting != null : !TEMPERATURE_ALARM_SETTING_EDEFAULT.equals(temperatureAlarmSetting);
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_FITTED:
				return testTapFitted != TEST_TAP_FITTED_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__TEST_TAP_DISTANCE:
				return TEST_TAP_DISTANCE_EDEFAULT == null ? testTapDistance != null : !TEST_TAP_DISTANCE_EDEFAULT.equals(testTapDistance);
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE:
				return MEASURED_BACK_PRESSURE_EDEFAULT == null ? measuredBackPressure != null : !MEASURED_BACK_PRESSURE_EDEFAULT.equals(measuredBackPressure);
			case GarboardPackage.EXHAUST_RUN__MEASURED_BACK_PRESSURE_LOAD:
				return MEASURED_BACK_PRESSURE_LOAD_EDEFAULT == null ? measuredBackPressureLoad != null : !MEASURED_BACK_PRESSURE_LOAD_EDEFAULT.equals(measuredBackPressureLoad);
			case GarboardPackage.EXHAUST_RUN__BASELINE_BACK_PRESSURE:
				return BASELINE_BACK_PRESSURE_EDEFAULT == null ? baselineBackPressure != null : !BASELINE_BACK_PRESSURE_EDEFAULT.equals(baselineBackPressure);
			case GarboardPackage.EXHAUST_RUN__SILENCER_LOSS:
				return SILENCER_LOSS_EDEFAULT == null ? silencerLoss != null : !SILENCER_LOSS_EDEFAULT.equals(silencerLoss);
			case GarboardPackage.EXHAUST_RUN__WATER_FULL_LENGTH:
				return waterFullLength != WATER_FULL_LENGTH_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__BULKHEADS_SEALED:
				return bulkheadsSealed != BULKHEADS_SEALED_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__JOINTS_ACCESSIBLE:
				return jointsAccessible != JOINTS_ACCESSIBLE_EDEFAULT;
			case GarboardPackage.EXHAUST_RUN__CLEAR_OF_COMBUSTIBLES:
				return clearOfCombustibles != CLEAR_OF_COMBUSTIBLES_EDEFAULT;
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
		result.append(" (turbineOutletPortBore: ");
		result.append(turbineOutletPortBore);
		result.append(", ownSystem: ");
		result.append(ownSystem);
		result.append(", gasTight: ");
		result.append(gasTight);
		result.append(", dryPartsLagged: ");
		result.append(dryPartsLagged);
		result.append(", dryPartSurfaceTemperature: ");
		result.append(dryPartSurfaceTemperature);
		result.append(", weightOnManifold: ");
		result.append(weightOnManifold);
		result.append(", temperatureAlarm: ");
		result.append(temperatureAlarm);
		result.append(", temperatureAlarmSetting: ");
		result.append(temperatureAlarmSetting);
		result.append(", testTapFitted: ");
		result.append(testTapFitted);
		result.append(", testTapDistance: ");
		result.append(testTapDistance);
		result.append(", measuredBackPressure: ");
		result.append(measuredBackPressure);
		result.append(", measuredBackPressureLoad: ");
		result.append(measuredBackPressureLoad);
		result.append(", baselineBackPressure: ");
		result.append(baselineBackPressure);
		result.append(", silencerLoss: ");
		result.append(silencerLoss);
		result.append(", waterFullLength: ");
		result.append(waterFullLength);
		result.append(", bulkheadsSealed: ");
		result.append(bulkheadsSealed);
		result.append(", jointsAccessible: ");
		result.append(jointsAccessible);
		result.append(", clearOfCombustibles: ");
		result.append(clearOfCombustibles);
		result.append(')');
		return result.toString();
	}

} //ExhaustRunImpl
