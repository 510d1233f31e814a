/**
 */
package garboard.model.impl;

import garboard.model.Answer;
import garboard.model.ExhaustCrest;
import garboard.model.GarboardPackage;
import garboard.model.Point;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;
import org.eclipse.emf.ecore.impl.MinimalEObjectImpl;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Exhaust Crest</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link garboard.model.impl.ExhaustCrestImpl#getInsideBottom <em>Inside Bottom</em>}</li>
 *   <li>{@link garboard.model.impl.ExhaustCrestImpl#getVented <em>Vented</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ExhaustCrestImpl extends MinimalEObjectImpl.Container implements ExhaustCrest {
	/**
	 * The cached value of the '{@link #getInsideBottom() <em>Inside Bottom</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getInsideBottom()
	 * @generated
	 * @ordered
	 */
	protected Point insideBottom;

	/**
	 * The default value of the '{@link #getVented() <em>Vented</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVented()
	 * @generated
	 * @ordered
	 */
	protected static final Answer VENTED_EDEFAULT = Answer.UNANSWERED;

	/**
	 * The cached value of the '{@link #getVented() <em>Vented</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVented()
	 * @generated
	 * @ordered
	 */
	protected Answer vented = VENTED_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ExhaustCrestImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return GarboardPackage.Literals.EXHAUST_CREST;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Point getInsideBottom() {
		return insideBottom;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetInsideBottom(Point newInsideBottom, NotificationChain msgs) {
		Point oldInsideBottom = insideBottom;
		insideBottom = newInsideBottom;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM, oldInsideBottom, newInsideBottom);
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
	public void setInsideBottom(Point newInsideBottom) {
		if (newInsideBottom != insideBottom) {
			NotificationChain msgs = null;
			if (insideBottom != null)
				msgs = ((InternalEObject)insideBottom).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM, null, msgs);
			if (newInsideBottom != null)
				msgs = ((InternalEObject)newInsideBottom).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM, null, msgs);
			msgs = basicSetInsideBottom(newInsideBottom, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM, newInsideBottom, newInsideBottom));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Answer getVented() {
		return vented;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVented(Answer newVented) {
		Answer oldVented = vented;
		vented = newVented == null ? VENTED_EDEFAULT : newVented;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, GarboardPackage.EXHAUST_CREST__VENTED, oldVented, vented));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM:
				return basicSetInsideBottom(null, msgs);
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
			case GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM:
				return getInsideBottom();
			case GarboardPackage.EXHAUST_CREST__VENTED:
				return getVented();
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
			case GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM:
				setInsideBottom((Point)newValue);
				return;
			case GarboardPackage.EXHAUST_CREST__VENTED:
				setVented((Answer)newValue);
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
			case GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM:
				setInsideBottom((Point)null);
				return;
			case GarboardPackage.EXHAUST_CREST__VENTED:
				setVented(VENTED_EDEFAULT);
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
			case GarboardPackage.EXHAUST_CREST__INSIDE_BOTTOM:
				return insideBottom != null;
			case GarboardPackage.EXHAUST_CREST__VENTED:
				return vented != VENTED_EDEFAULT;
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
		result.append(" (vented: ");
		result.append(vented);
		result.append(')');
		return result.toString();
	}

} //ExhaustCrestImpl
