/**
 */
package garboard.model;

import garboard.quantity.Angle;
import garboard.quantity.Speed;
import garboard.quantity.TimeSpan;

import java.time.LocalDate;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Sea Run</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.SeaRun#getDate <em>Date</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getHeelPort <em>Heel Port</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getHeelStarboard <em>Heel Starboard</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getTrimUp <em>Trim Up</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getTrimDown <em>Trim Down</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getSpeed <em>Speed</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getWaterFlowing <em>Water Flowing</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getWaterOverCrest <em>Water Over Crest</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getWaterInMuffler <em>Water In Muffler</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getDifference <em>Difference</em>}</li>
 *   <li>{@link garboard.model.SeaRun#getDuration <em>Duration</em>}</li>
 * </ul>
 *
 * @see garboard.model.GarboardPackage#getSeaRun()
 * @generated
 */
public interface SeaRun extends EObject {
	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(LocalDate)
	 * @see garboard.model.GarboardPackage#getSeaRun_Date()
	 * @generated
	 */
	LocalDate getDate();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(LocalDate value);

	/**
	 * Returns the value of the '<em><b>Heel Port</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Heel Port</em>' attribute.
	 * @see #setHeelPort(Angle)
	 * @see garboard.model.GarboardPackage#getSeaRun_HeelPort()
	 * @generated
	 */
	Angle getHeelPort();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getHeelPort <em>Heel Port</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heel Port</em>' attribute.
	 * @see #getHeelPort()
	 * @generated
	 */
	void setHeelPort(Angle value);

	/**
	 * Returns the value of the '<em><b>Heel Starboard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Heel Starboard</em>' attribute.
	 * @see #setHeelStarboard(Angle)
	 * @see garboard.model.GarboardPackage#getSeaRun_HeelStarboard()
	 * @generated
	 */
	Angle getHeelStarboard();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getHeelStarboard <em>Heel Starboard</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Heel Starboard</em>' attribute.
	 * @see #getHeelStarboard()
	 * @generated
	 */
	void setHeelStarboard(Angle value);

	/**
	 * Returns the value of the '<em><b>Trim Up</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Trim Up</em>' attribute.
	 * @see #setTrimUp(Angle)
	 * @see garboard.model.GarboardPackage#getSeaRun_TrimUp()
	 * @generated
	 */
	Angle getTrimUp();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getTrimUp <em>Trim Up</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trim Up</em>' attribute.
	 * @see #getTrimUp()
	 * @generated
	 */
	void setTrimUp(Angle value);

	/**
	 * Returns the value of the '<em><b>Trim Down</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Trim Down</em>' attribute.
	 * @see #setTrimDown(Angle)
	 * @see garboard.model.GarboardPackage#getSeaRun_TrimDown()
	 * @generated
	 */
	Angle getTrimDown();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getTrimDown <em>Trim Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Trim Down</em>' attribute.
	 * @see #getTrimDown()
	 * @generated
	 */
	void setTrimDown(Angle value);

	/**
	 * Returns the value of the '<em><b>Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Speed</em>' attribute.
	 * @see #setSpeed(Speed)
	 * @see garboard.model.GarboardPackage#getSeaRun_Speed()
	 * @generated
	 */
	Speed getSpeed();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getSpeed <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Speed</em>' attribute.
	 * @see #getSpeed()
	 * @generated
	 */
	void setSpeed(Speed value);

	/**
	 * Returns the value of the '<em><b>Water Flowing</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Water Flowing</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWaterFlowing(Answer)
	 * @see garboard.model.GarboardPackage#getSeaRun_WaterFlowing()
	 * @generated
	 */
	Answer getWaterFlowing();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getWaterFlowing <em>Water Flowing</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Flowing</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWaterFlowing()
	 * @generated
	 */
	void setWaterFlowing(Answer value);

	/**
	 * Returns the value of the '<em><b>Water Over Crest</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Water Over Crest</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWaterOverCrest(Answer)
	 * @see garboard.model.GarboardPackage#getSeaRun_WaterOverCrest()
	 * @generated
	 */
	Answer getWaterOverCrest();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getWaterOverCrest <em>Water Over Crest</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water Over Crest</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWaterOverCrest()
	 * @generated
	 */
	void setWaterOverCrest(Answer value);

	/**
	 * Returns the value of the '<em><b>Water In Muffler</b></em>' attribute.
	 * The literals are from the enumeration {@link garboard.model.Answer}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Water In Muffler</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #setWaterInMuffler(Answer)
	 * @see garboard.model.GarboardPackage#getSeaRun_WaterInMuffler()
	 * @generated
	 */
	Answer getWaterInMuffler();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getWaterInMuffler <em>Water In Muffler</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Water In Muffler</em>' attribute.
	 * @see garboard.model.Answer
	 * @see #getWaterInMuffler()
	 * @generated
	 */
	void setWaterInMuffler(Answer value);

	/**
	 * Returns the value of the '<em><b>Difference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Difference</em>' attribute.
	 * @see #setDifference(String)
	 * @see garboard.model.GarboardPackage#getSeaRun_Difference()
	 * @generated
	 */
	String getDifference();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getDifference <em>Difference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Difference</em>' attribute.
	 * @see #getDifference()
	 * @generated
	 */
	void setDifference(String value);

	/**
	 * Returns the value of the '<em><b>Duration</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Duration</em>' attribute.
	 * @see #setDuration(TimeSpan)
	 * @see garboard.model.GarboardPackage#getSeaRun_Duration()
	 * @generated
	 */
	TimeSpan getDuration();

	/**
	 * Sets the value of the '{@link garboard.model.SeaRun#getDuration <em>Duration</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Duration</em>' attribute.
	 * @see #getDuration()
	 * @generated
	 */
	void setDuration(TimeSpan value);

} // SeaRun
