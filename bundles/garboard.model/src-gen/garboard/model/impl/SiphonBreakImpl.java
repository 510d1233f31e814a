/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.GarboardPackage;
import garboard.model.Point;
import garboard.model.SiphonBreak;
import garboard.model.SiphonBreakKind;
import garboard.model.SiphonBreakPlace;
import garboard.model.VentHoseEnd;

import garboard.quantity.Length;

import java.time.LocalDate;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Siphon Break</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getVentSeat <em>Vent Seat</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getPlace <em>Place</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getBore <em>Bore</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getHighestPoint <em>Highest Point</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getVentHose <em>Vent Hose</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getVentHoseFree <em>Vent Hose Free</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getVentHoseEndHeight <em>Vent Hose End Height</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getBleedBore <em>Bleed Bore</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getTellTaleVisible <em>Tell Tale Visible</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getAboveElectrics <em>Above Electrics</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getDripShield <em>Drip Shield</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getServicedOn <em>Serviced On</em>}</li>
 *   <li>{@link garboard.model.impl.SiphonBreakImpl#getValveTested <em>Valve Tested</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SiphonBreakImpl extends MinimalEObjectImpl.Container implements SiphonBreak {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final SiphonBreakKind KIND_EDEFAULT = SiphonBreakKind.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected SiphonBreakKind kind = KIND_EDEFAULT;

	/**
	 * The cached value of the '{@link #getVentSeat() <em>Vent Seat</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentSeat()
	 * @generated
	 * @ordered
	 */
	protected Point ventSeat;

	/**
	 * The default value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected static final SiphonBreakPlace PLACE_EDEFAULT = SiphonBreakPlace.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getPlace() <em>Place</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPlace()
	 * @generated
	 * @ordered
	 */
	protected SiphonBreakPlace place = PLACE_EDEFAULT;

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
	 * The default value of the '{@link #getHighestPoint() <em>Highest Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighestPoint()
	 * @generated
	 * @ordered
	 */
	protected static final Answer HIGHEST_POINT_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getHighestPoint() <em>Highest Point</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHighestPoint()
	 * @generated
	 * @ordered
	 */
	protected Answer highestPoint = HIGHEST_POINT_EDEFAULT;

	/**
	 * The default value of the '{@link #getVentHose() <em>Vent Hose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentHose()
	 * @generated
	 * @ordered
	 */
	protected static final VentHoseEnd VENT_HOSE_EDEFAULT = VentHoseEnd.NOT_ENTERED;

	/**
	 * The cached value of the '{@link #getVentHose() <em>Vent Hose</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentHose()
	 * @generated
	 * @ordered
	 */
	protected VentHoseEnd ventHose = VENT_HOSE_EDEFAULT;

	/**
	 * The default value of the '{@link #getVentHoseFree() <em>Vent Hose Free</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentHoseFree()
	 * @generated
	 * @ordered
	 */
	protected static final Answer VENT_HOSE_FREE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getVentHoseFree() <em>Vent Hose Free</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentHoseFree()
	 * @generated
	 * @ordered
	 */
	protected Answer ventHoseFree = VENT_HOSE_FREE_EDEFAULT;

	/**
	 * The default value of the '{@link #getVentHoseEndHeight() <em>Vent Hose End Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentHoseEndHeight()
	 * @generated
	 * @ordered
	 */
	protected static final Length VENT_HOSE_END_HEIGHT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVentHoseEndHeight() <em>Vent Hose End Height</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVentHoseEndHeight()
	 * @generated
	 * @ordered
	 */
	protected Length ventHoseEndHeight = VENT_HOSE_END_HEIGHT_EDEFAULT;

	/**
	 * The default value of the '{@link #getBleedBore() <em>Bleed Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBleedBore()
	 * @generated
	 * @ordered
	 */
	protected static final Length BLEED_BORE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBleedBore() <em>Bleed Bore</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBleedBore()
	 * @generated
	 * @ordered
	 */
	protected Length bleedBore = BLEED_BORE_EDEFAULT;

	/**
	 * The default value of the '{@link #getTellTaleVisible() <em>Tell Tale Visible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTellTaleVisible()
	 * @generated
	 * @ordered
	 */
	protected static final Answer TELL_TALE_VISIBLE_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getTellTaleVisible() <em>Tell Tale Visible</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTellTaleVisible()
	 * @generated
	 * @ordered
	 */
	protected Answer tellTaleVisible = TELL_TALE_VISIBLE_EDEFAULT;

	/**
	 * The default value of the '{@link #getAboveElectrics() <em>Above Electrics</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAboveElectrics()
	 * @generated
	 * @ordered
	 */
	protected static final Answer ABOVE_ELECTRICS_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getAboveElectrics() <em>Above Electrics</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAboveElectrics()
	 * @generated
	 * @ordered
	 */
	protected Answer aboveElectrics = ABOVE_ELECTRICS_EDEFAULT;

	/**
	 * The default value of the '{@link #getDripShield() <em>Drip Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDripShield()
	 * @generated
	 * @ordered
	 */
	protected static final Answer DRIP_SHIELD_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getDripShield() <em>Drip Shield</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDripShield()
	 * @generated
	 * @ordered
	 */
	protected Answer dripShield = DRIP_SHIELD_EDEFAULT;

	/**
	 * The default value of the '{@link #getServicedOn() <em>Serviced On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getServicedOn()
	 * @generated
	 * @ordered
	 */
	protected static final LocalDate SERVICED_ON_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getServicedOn() <em>Serviced On</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getServicedOn()
	 * @generated
	 * @ordered
	 */
	protected LocalDate servicedOn = SERVICED_ON_EDEFAULT;

	/**
	 * The default value of the '{@link #getValveTested() <em>Valve Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValveTested()
	 * @generated
	 * @ordered
	 */
	protected static final Answer VALVE_TESTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getValveTested() <em>Valve Tested</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getValveTested()
	 * @generated
	 * @ordered
	 */
	protected Answer valveTested = VALVE_TESTED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SiphonBreakImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.SIPHON_BREAK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SiphonBreakKind getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(SiphonBreakKind newKind) {
		SiphonBreakKind oldKind = kind;
		kind = newKind == null ? KIND_EDEFAULT : newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getVentSeat() {
		return ventSeat;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetVentSeat(Point newVentSeat, NotificationChain msgs) {
		Point oldVentSeat = ventSeat;
		ventSeat = newVentSeat;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__VENT_SEAT, oldVentSeat, newVentSeat);
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
	public void setVentSeat(Point newVentSeat) {
		if (newVentSeat != ventSeat) {
			NotificationChain msgs = null;
			if (ventSeat != null)
				msgs = ((InternalEObject)ventSeat).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.SIPHON_BREAK__VENT_SEAT, null, msgs);
			if (newVentSeat != null)
				msgs = ((InternalEObject)newVentSeat).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.SIPHON_BREAK__VENT_SEAT, null, msgs);
			msgs = basicSetVentSeat(newVentSeat, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__VENT_SEAT, newVentSeat, newVentSeat));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public SiphonBreakPlace getPlace() {
		return place;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPlace(SiphonBreakPlace newPlace) {
		SiphonBreakPlace oldPlace = place;
		place = newPlace == null ? PLACE_EDEFAULT : newPlace;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__PLACE, oldPlace, place));
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
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__BORE, oldBore, bore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getHighestPoint() {
		return highestPoint;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHighestPoint(Answer newHighestPoint) {
		Answer oldHighestPoint = highestPoint;
		highestPoint = newHighestPoint == null ? HIGHEST_POINT_EDEFAULT : newHighestPoint;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__HIGHEST_POINT, oldHighestPoint, highestPoint));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public VentHoseEnd getVentHose() {
		return ventHose;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVentHose(VentHoseEnd newVentHose) {
		VentHoseEnd oldVentHose = ventHose;
		ventHose = newVentHose == null ? VENT_HOSE_EDEFAULT : newVentHose;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__VENT_HOSE, oldVentHose, ventHose));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getVentHoseFree() {
		return ventHoseFree;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVentHoseFree(Answer newVentHoseFree) {
		Answer oldVentHoseFree = ventHoseFree;
		ventHoseFree = newVentHoseFree == null ? VENT_HOSE_FREE_EDEFAULT : newVentHoseFree;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__VENT_HOSE_FREE, oldVentHoseFree, ventHoseFree));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getVentHoseEndHeight() {
		return ventHoseEndHeight;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVentHoseEndHeight(Length newVentHoseEndHeight) {
		Length oldVentHoseEndHeight = ventHoseEndHeight;
		ventHoseEndHeight = newVentHoseEndHeight;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__VENT_HOSE_END_HEIGHT, oldVentHoseEndHeight, ventHoseEndHeight));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Length getBleedBore() {
		return bleedBore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBleedBore(Length newBleedBore) {
		Length oldBleedBore = bleedBore;
		bleedBore = newBleedBore;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__BLEED_BORE, oldBleedBore, bleedBore));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getTellTaleVisible() {
		return tellTaleVisible;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTellTaleVisible(Answer newTellTaleVisible) {
		Answer oldTellTaleVisible = tellTaleVisible;
		tellTaleVisible = newTellTaleVisible == null ? TELL_TALE_VISIBLE_EDEFAULT : newTellTaleVisible;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__TELL_TALE_VISIBLE, oldTellTaleVisible, tellTaleVisible));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getAboveElectrics() {
		return aboveElectrics;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAboveElectrics(Answer newAboveElectrics) {
		Answer oldAboveElectrics = aboveElectrics;
		aboveElectrics = newAboveElectrics == null ? ABOVE_ELECTRICS_EDEFAULT : newAboveElectrics;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__ABOVE_ELECTRICS, oldAboveElectrics, aboveElectrics));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getDripShield() {
		return dripShield;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDripShield(Answer newDripShield) {
		Answer oldDripShield = dripShield;
		dripShield = newDripShield == null ? DRIP_SHIELD_EDEFAULT : newDripShield;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__DRIP_SHIELD, oldDripShield, dripShield));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public LocalDate getServicedOn() {
		return servicedOn;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setServicedOn(LocalDate newServicedOn) {
		LocalDate oldServicedOn = servicedOn;
		servicedOn = newServicedOn;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__SERVICED_ON, oldServicedOn, servicedOn));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getValveTested() {
		return valveTested;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setValveTested(Answer newValveTested) {
		Answer oldValveTested = valveTested;
		valveTested = newValveTested == null ? VALVE_TESTED_EDEFAULT : newValveTested;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.SIPHON_BREAK__VALVE_TESTED, oldValveTested, valveTested));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.SIPHON_BREAK__VENT_SEAT:
				return basicSetVentSeat(null, msgs);
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
			case GarboardPackage.SIPHON_BREAK__KIND:
				return getKind();
			case GarboardPackage.SIPHON_BREAK__VENT_SEAT:
				return getVentSeat();
			case GarboardPackage.SIPHON_BREAK__PLACE:
				return getPlace();
			case GarboardPackage.SIPHON_BREAK__BORE:
				return getBore();
			case GarboardPackage.SIPHON_BREAK__HIGHEST_POINT:
				return getHighestPoint();
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE:
				return getVentHose();
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE_FREE:
				return getVentHoseFree();
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE_END_HEIGHT:
				return getVentHoseEndHeight();
			case GarboardPackage.SIPHON_BREAK__BLEED_BORE:
				return getBleedBore();
			case GarboardPackage.SIPHON_BREAK__TELL_TALE_VISIBLE:
				return getTellTaleVisible();
			case GarboardPackage.SIPHON_BREAK__ABOVE_ELECTRICS:
				return getAboveElectrics();
			case GarboardPackage.SIPHON_BREAK__DRIP_SHIELD:
				return getDripShield();
			case GarboardPackage.SIPHON_BREAK__SERVICED_ON:
				return getServicedOn();
			case GarboardPackage.SIPHON_BREAK__VALVE_TESTED:
				return getValveTested();
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
			case GarboardPackage.SIPHON_BREAK__KIND:
				setKind((SiphonBreakKind)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__VENT_SEAT:
				setVentSeat((Point)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__PLACE:
				setPlace((SiphonBreakPlace)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__BORE:
				setBore((Length)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__HIGHEST_POINT:
				setHighestPoint((Answer)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE:
				setVentHose((VentHoseEnd)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE_FREE:
				setVentHoseFree((Answer)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE_END_HEIGHT:
				setVentHoseEndHeight((Length)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__BLEED_BORE:
				setBleedBore((Length)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__TELL_TALE_VISIBLE:
				setTellTaleVisible((Answer)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__ABOVE_ELECTRICS:
				setAboveElectrics((Answer)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__DRIP_SHIELD:
				setDripShield((Answer)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__SERVICED_ON:
				setServicedOn((LocalDate)newValue);
				return;
			case GarboardPackage.SIPHON_BREAK__VALVE_TESTED:
				setValveTested((Answer)newValue);
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
			case GarboardPackage.SIPHON_BREAK__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__VENT_SEAT:
				setVentSeat((Point)null);
				return;
			case GarboardPackage.SIPHON_BREAK__PLACE:
				setPlace(PLACE_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__BORE:
				setBore(BORE_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__HIGHEST_POINT:
				setHighestPoint(HIGHEST_POINT_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE:
				setVentHose(VENT_HOSE_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE_FREE:
				setVentHoseFree(VENT_HOSE_FREE_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE_END_HEIGHT:
				setVentHoseEndHeight(VENT_HOSE_END_HEIGHT_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__BLEED_BORE:
				setBleedBore(BLEED_BORE_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__TELL_TALE_VISIBLE:
				setTellTaleVisible(TELL_TALE_VISIBLE_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__ABOVE_ELECTRICS:
				setAboveElectrics(ABOVE_ELECTRICS_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__DRIP_SHIELD:
				setDripShield(DRIP_SHIELD_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__SERVICED_ON:
				setServicedOn(SERVICED_ON_EDEFAULT);
				return;
			case GarboardPackage.SIPHON_BREAK__VALVE_TESTED:
				setValveTested(VALVE_TESTED_EDEFAULT);
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
			case GarboardPackage.SIPHON_BREAK__KIND:
				return kind != KIND_EDEFAULT;
			case GarboardPackage.SIPHON_BREAK__VENT_SEAT:
				return ventSeat != null;
			case GarboardPackage.SIPHON_BREAK__PLACE:
				return place != PLACE_EDEFAULT;
			case GarboardPackage.SIPHON_BREAK__BORE:
				return BORE_EDEFAULT == null ? bore != null : !BORE_EDEFAULT.equals(bore);
			case GarboardPackage.SIPHON_BREAK__HIGHEST_POINT:
				return highestPoint != HIGHEST_POINT_EDEFAULT;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE:
				return ventHose != VENT_HOSE_EDEFAULT;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE_FREE:
				return ventHoseFree != VENT_HOSE_FREE_EDEFAULT;
			case GarboardPackage.SIPHON_BREAK__VENT_HOSE_END_HEIGHT:
				return VENT_HOSE_END_HEIGHT_EDEFAULT == null ? ventHoseEndHeight != null : !VENT_HOSE_END_HEIGHT_EDEFAULT.equals(ventHoseEndHeight);
			case GarboardPackage.SIPHON_BREAK__BLEED_BORE:
				return BLEED_BORE_EDEFAULT == null ? bleedBore != null : !BLEED_BORE_EDEFAULT.equals(bleedBore);
			case GarboardPackage.SIPHON_BREAK__TELL_TALE_VISIBLE:
				return tellTaleVisible != TELL_TALE_VISIBLE_EDEFAULT;
			case GarboardPackage.SIPHON_BREAK__ABOVE_ELECTRICS:
				return aboveElectrics != ABOVE_ELECTRICS_EDEFAULT;
			case GarboardPackage.SIPHON_BREAK__DRIP_SHIELD:
				return dripShield != DRIP_SHIELD_EDEFAULT;
			case GarboardPackage.SIPHON_BREAK__SERVICED_ON:
				return SERVICED_ON_EDEFAULT == null ? servicedOn != null : !SERVICED_ON_EDEFAULT.equals(servicedOn);
			case GarboardPackage.SIPHON_BREAK__VALVE_TESTED:
				return valveTested != VALVE_TESTED_EDEFAULT;
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
		result.append(", place: ");
		result.append(place);
		result.append(", bore: ");
		result.append(bore);
		result.append(", highestPoint: ");
		result.append(highestPoint);
		result.append(", ventHose: ");
		result.append(ventHose);
		result.append(", ventHoseFree: ");
		result.append(ventHoseFree);
		result.append(", ventHoseEndHeight: ");
		result.append(ventHoseEndHeight);
		result.append(", bleedBore: ");
		result.append(bleedBore);
		result.append(", tellTaleVisible: ");
		result.append(tellTaleVisible);
		result.append(", aboveElectrics: ");
		result.append(aboveElectrics);
		result.append(", dripShield: ");
		result.append(dripShield);
		result.append(", servicedOn: ");
		result.append(servicedOn);
		result.append(", valveTested: ");
		result.append(valveTested);
		result.append(')');
		return result.toString();
	}

} //SiphonBreakImpl
