/**
 */
package garboard.model;

import garboard.quantity.GaugePressure;
import garboard.quantity.Length;
import garboard.quantity.PressureDifference;
import garboard.quantity.Ratio;
import garboard.quantity.Temperature;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Exhaust Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.ExhaustRun#getPath <em>Path</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getSections <em>Sections</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getMuffler <em>Muffler</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getRiser <em>Riser</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getCrest <em>Crest</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getOutlet <em>Outlet</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getSeparatorDrain <em>Separator Drain</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getTurbineOutletPortBore <em>Turbine Outlet Port Bore</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getOwnSystem <em>Own System</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getGasTight <em>Gas Tight</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getDryPartsLagged <em>Dry Parts Lagged</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getDryPartSurfaceTemperature <em>Dry Part Surface Temperature</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getWeightOnManifold <em>Weight On Manifold</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getTemperatureAlarm <em>Temperature Alarm</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getTemperatureAlarmSetting <em>Temperature Alarm Setting</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getTestTapFitted <em>Test Tap Fitted</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getTestTapDistance <em>Test Tap Distance</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getMeasuredBackPressure <em>Measured Back Pressure</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getMeasuredBackPressureLoad <em>Measured Back Pressure Load</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getBaselineBackPressure <em>Baseline Back Pressure</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getSilencerLoss <em>Silencer Loss</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getWaterFullLength <em>Water Full Length</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getBulkheadsSealed <em>Bulkheads Sealed</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getJointsAccessible <em>Joints Accessible</em>}</li>
 *   <li>{@link garboard.model.ExhaustRun#getClearOfCombustibles <em>Clear Of Combustibles</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getExhaustRun()
 * @generated
 */
public interface ExhaustRun extends EObject {
	/**
	 * Returns the value of the '<em><b>Path</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.ExhaustPoint}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Path</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getExhaustRun_Path()
	 * @generated
	 */
	EList<ExhaustPoint> getPath();

	/**
	 * Returns the value of the '<em><b>Sections</b></em>' containment reference list.
	 * The list contents are of type {@link garboard.model.ExhaustSectionRun}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Sections</em>' containment reference list.
	 * @see garboard.model.GarboardPackage#getExhaustRun_Sections()
	 * @generated
	 */
	EList<ExhaustSectionRun> getSections();

	/**
	 * Returns the value of the '<em><b>Muffler</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Muffler</em>' containment reference.
	 * @see #setMuffler(Muffler)
	 * @see garboard.model.GarboardPackage#getExhaustRun_Muffler()
	 * @generated
	 */
	Muffler getMuffler();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getMuffler <em>Muffler</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Muffler</em>' containment reference.
	 * @see #getMuffler()
	 * @generated
	 */
	void setMuffler(Muffler value);

	/**
	 * Returns the value of the '<em><b>Riser</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Riser</em>' containment reference.
	 * @see #setRiser(Riser)
	 * @see garboard.model.GarboardPackage#getExhaustRun_Riser()
	 * @generated
	 */
	Riser getRiser();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getRiser <em>Riser</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Riser</em>' containment reference.
	 * @see #getRiser()
	 * @generated
	 */
	void setRiser(Riser value);

	/**
	 * Returns the value of the '<em><b>Crest</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Crest</em>' containment reference.
	 * @see #setCrest(ExhaustCrest)
	 * @see garboard.model.GarboardPackage#getExhaustRun_Crest()
	 * @generated
	 */
	ExhaustCrest getCrest();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getCrest <em>Crest</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Crest</em>' containment reference.
	 * @see #getCrest()
	 * @generated
	 */
	void setCrest(ExhaustCrest value);

	/**
	 * Returns the value of the '<em><b>Outlet</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Outlet</em>' containment reference.
	 * @see #setOutlet(ExhaustOutlet)
	 * @see garboard.model.GarboardPackage#getExhaustRun_Outlet()
	 * @generated
	 */
	ExhaustOutlet getOutlet();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getOutlet <em>Outlet</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Outlet</em>' containment reference.
	 * @see #getOutlet()
	 * @generated
	 */
	void setOutlet(ExhaustOutlet value);

	/**
	 * Returns the value of the '<em><b>Separator Drain</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Separator Drain</em>' containment reference.
	 * @see #setSeparatorDrain(SeparatorDrain)
	 * @see garboard.model.GarboardPackage#getExhaustRun_SeparatorDrain()
	 * @generated
	 */
	SeparatorDrain getSeparatorDrain();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getSeparatorDrain <em>Separator Drain</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Separator Drain</em>' containment reference.
	 * @see #getSeparatorDrain()
	 * @generated
	 */
	void setSeparatorDrain(SeparatorDrain value);

	/**
	 * Returns the value of the '<em><b>Turbine Outlet Port Bore</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Turbine Outlet Port Bore</em>' attribute.
	 * @see #setTurbineOutletPortBore(Length)
	 * @see garboard.model.GarboardPackage#getExhaustRun_TurbineOutletPortBore()
	 * @generated
	 */
	Length getTurbineOutletPortBore();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getTurbineOutletPortBore <em>Turbine Outlet Port Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Turbine Outlet Port Bore</em>' attribute.
	 * @see #getTurbineOutletPortBore()
	 * @generated
	 */
	void setTurbineOutletPortBore(Length value);

	/**
	 * Returns the value of the '<em><b>Own System</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Own System</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setOwnSystem(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_OwnSystem()
	 * @generated
	 */
	Answer getOwnSystem();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getOwnSystem <em>Own System</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Own System</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getOwnSystem()
	 * @generated
	 */
	void setOwnSystem(Answer value);

	/**
	 * Returns the value of the '<em><b>Gas Tight</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Gas Tight</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setGasTight(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_GasTight()
	 * @generated
	 */
	Answer getGasTight();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getGasTight <em>Gas Tight</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gas Tight</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getGasTight()
	 * @generated
	 */
	void setGasTight(Answer value);

	/**
	 * Returns the value of the '<em><b>Dry Parts Lagged</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dry Parts Lagged</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setDryPartsLagged(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_DryPartsLagged()
	 * @generated
	 */
	Answer getDryPartsLagged();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getDryPartsLagged <em>Dry Parts Lagged</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dry Parts Lagged</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getDryPartsLagged()
	 * @generated
	 */
	void setDryPartsLagged(Answer value);

	/**
	 * Returns the value of the '<em><b>Dry Part Surface Temperature</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Dry Part Surface Temperature</em>' attribute.
	 * @see #setDryPartSurfaceTemperature(Temperature)
	 * @see garboard.model.GarboardPackage#getExhaustRun_DryPartSurfaceTemperature()
	 * @generated
	 */
	Temperature getDryPartSurfaceTemperature();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getDryPartSurfaceTemperature <em>Dry Part Surface Temperature</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Dry Part Surface Temperature</em>' attribute.
	 * @see #getDryPartSurfaceTemperature()
	 * @generated
	 */
	void setDryPartSurfaceTemperature(Temperature value);

	/**
	 * Returns the value of the '<em><b>Weight On Manifold</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Weight On Manifold</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWeightOnManifold(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_WeightOnManifold()
	 * @generated
	 */
	Answer getWeightOnManifold();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getWeightOnManifold <em>Weight On Manifold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Weight On Manifold</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWeightOnManifold()
	 * @generated
	 */
	void setWeightOnManifold(Answer value);

	/**
	 * Returns the value of the '<em><b>Temperature Alarm</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Temperature Alarm</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setTemperatureAlarm(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_TemperatureAlarm()
	 * @generated
	 */
	Answer getTemperatureAlarm();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getTemperatureAlarm <em>Temperature Alarm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Temperature Alarm</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getTemperatureAlarm()
	 * @generated
	 */
	void setTemperatureAlarm(Answer value);

	/**
	 * Returns the value of the '<em><b>Temperature Alarm Setting</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Temperature Alarm Setting</em>' attribute.
	 * @see #setTemperatureAlarmSetting(Temperature)
	 * @see garboard.model.GarboardPackage#getExhaustRun_TemperatureAlarmSetting()
	 * @generated
	 */
	Temperature getTemperatureAlarmSetting();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getTemperatureAlarmSetting <em>Temperature Alarm Setting</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Temperature Alarm Setting</em>' attribute.
	 * @see #getTemperatureAlarmSetting()
	 * @generated
	 */
	void setTemperatureAlarmSetting(Temperature value);

	/**
	 * Returns the value of the '<em><b>Test Tap Fitted</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Test Tap Fitted</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setTestTapFitted(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_TestTapFitted()
	 * @generated
	 */
	Answer getTestTapFitted();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getTestTapFitted <em>Test Tap Fitted</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Test Tap Fitted</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getTestTapFitted()
	 * @generated
	 */
	void setTestTapFitted(Answer value);

	/**
	 * Returns the value of the '<em><b>Test Tap Distance</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Test Tap Distance</em>' attribute.
	 * @see #setTestTapDistance(Length)
	 * @see garboard.model.GarboardPackage#getExhaustRun_TestTapDistance()
	 * @generated
	 */
	Length getTestTapDistance();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getTestTapDistance <em>Test Tap Distance</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Test Tap Distance</em>' attribute.
	 * @see #getTestTapDistance()
	 * @generated
	 */
	void setTestTapDistance(Length value);

	/**
	 * Returns the value of the '<em><b>Measured Back Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured Back Pressure</em>' attribute.
	 * @see #setMeasuredBackPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getExhaustRun_MeasuredBackPressure()
	 * @generated
	 */
	GaugePressure getMeasuredBackPressure();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getMeasuredBackPressure <em>Measured Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Back Pressure</em>' attribute.
	 * @see #getMeasuredBackPressure()
	 * @generated
	 */
	void setMeasuredBackPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Measured Back Pressure Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Measured Back Pressure Load</em>' attribute.
	 * @see #setMeasuredBackPressureLoad(Ratio)
	 * @see garboard.model.GarboardPackage#getExhaustRun_MeasuredBackPressureLoad()
	 * @generated
	 */
	Ratio getMeasuredBackPressureLoad();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getMeasuredBackPressureLoad <em>Measured Back Pressure Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Measured Back Pressure Load</em>' attribute.
	 * @see #getMeasuredBackPressureLoad()
	 * @generated
	 */
	void setMeasuredBackPressureLoad(Ratio value);

	/**
	 * Returns the value of the '<em><b>Baseline Back Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Baseline Back Pressure</em>' attribute.
	 * @see #setBaselineBackPressure(GaugePressure)
	 * @see garboard.model.GarboardPackage#getExhaustRun_BaselineBackPressure()
	 * @generated
	 */
	GaugePressure getBaselineBackPressure();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getBaselineBackPressure <em>Baseline Back Pressure</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Baseline Back Pressure</em>' attribute.
	 * @see #getBaselineBackPressure()
	 * @generated
	 */
	void setBaselineBackPressure(GaugePressure value);

	/**
	 * Returns the value of the '<em><b>Silencer Loss</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Silencer Loss</em>' attribute.
	 * @see #setSilencerLoss(PressureDifference)
	 * @see garboard.model.GarboardPackage#getExhaustRun_SilencerLoss()
	 * @generated
	 */
	PressureDifference getSilencerLoss();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getSilencerLoss <em>Silencer Loss</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Silencer Loss</em>' attribute.
	 * @see #getSilencerLoss()
	 * @generated
	 */
	void setSilencerLoss(PressureDifference value);

	/**
	 * Returns the value of the '<em><b>Water Full Length</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Water Full Length</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWaterFullLength(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_WaterFullLength()
	 * @generated
	 */
	Answer getWaterFullLength();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getWaterFullLength <em>Water Full Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Full Length</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWaterFullLength()
	 * @generated
	 */
	void setWaterFullLength(Answer value);

	/**
	 * Returns the value of the '<em><b>Bulkheads Sealed</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Bulkheads Sealed</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setBulkheadsSealed(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_BulkheadsSealed()
	 * @generated
	 */
	Answer getBulkheadsSealed();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getBulkheadsSealed <em>Bulkheads Sealed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Bulkheads Sealed</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getBulkheadsSealed()
	 * @generated
	 */
	void setBulkheadsSealed(Answer value);

	/**
	 * Returns the value of the '<em><b>Joints Accessible</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Joints Accessible</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setJointsAccessible(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_JointsAccessible()
	 * @generated
	 */
	Answer getJointsAccessible();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getJointsAccessible <em>Joints Accessible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Joints Accessible</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getJointsAccessible()
	 * @generated
	 */
	void setJointsAccessible(Answer value);

	/**
	 * Returns the value of the '<em><b>Clear Of Combustibles</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Clear Of Combustibles</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setClearOfCombustibles(Answer)
	 * @see garboard.model.GarboardPackage#getExhaustRun_ClearOfCombustibles()
	 * @generated
	 */
	Answer getClearOfCombustibles();

	/**
	 * Sets the value of the '{@link garboard.model.ExhaustRun#getClearOfCombustibles <em>Clear Of Combustibles</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Clear Of Combustibles</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getClearOfCombustibles()
	 * @generated
	 */
	void setClearOfCombustibles(Answer value);

} // ExhaustRun
