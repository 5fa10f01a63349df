/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Press Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a part was pressed in and let out.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.PressDetails#getSlack <em>Slack</em>}</li>
 *   <li>{@link org.flexwright.testing.data.PressDetails#getZeroForce <em>Zero Force</em>}</li>
 *   <li>{@link org.flexwright.testing.data.PressDetails#getSpeed <em>Speed</em>}</li>
 *   <li>{@link org.flexwright.testing.data.PressDetails#getStop <em>Stop</em>}</li>
 *   <li>{@link org.flexwright.testing.data.PressDetails#getTip <em>Tip</em>}</li>
 * </ul>
 *
 * @see org.flexwright.testing.data.TestingDataPackage#getPressDetails()
 * @model
 * @generated
 */
public interface PressDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Slack</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.testing.data.Slack}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How the place where the force begins is found.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Slack</em>' attribute.
	 * @see org.flexwright.testing.data.Slack
	 * @see #setSlack(Slack)
	 * @see org.flexwright.testing.data.TestingDataPackage#getPressDetails_Slack()
	 * @model annotation="urn:flexwright:field label='Contact' help='How the place where the force begins is found.'"
	 * @generated
	 */
	Slack getSlack();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.PressDetails#getSlack <em>Slack</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Slack</em>' attribute.
	 * @see org.flexwright.testing.data.Slack
	 * @see #getSlack()
	 * @generated
	 */
	void setSlack(Slack value);

	/**
	 * Returns the value of the '<em><b>Zero Force</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the gauge showed with nothing on it; taken off.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Zero Force</em>' attribute.
	 * @see #setZeroForce(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getPressDetails_ZeroForce()
	 * @model annotation="urn:flexwright:field kind='FORCE' unit='N' min='-10000' max='10000' label='Force at rest' help='What the gauge showed with nothing on it; taken off.'"
	 * @generated
	 */
	Double getZeroForce();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.PressDetails#getZeroForce <em>Zero Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Zero Force</em>' attribute.
	 * @see #getZeroForce()
	 * @generated
	 */
	void setZeroForce(Double value);

	/**
	 * Returns the value of the '<em><b>Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the tip.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Speed</em>' attribute.
	 * @see #setSpeed(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getPressDetails_Speed()
	 * @model annotation="urn:flexwright:field kind='SPEED' unit='mm/min' min='0' max='100000' label='Speed' help='Of the tip.'"
	 * @generated
	 */
	Double getSpeed();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.PressDetails#getSpeed <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Speed</em>' attribute.
	 * @see #getSpeed()
	 * @generated
	 */
	void setSpeed(Double value);

	/**
	 * Returns the value of the '<em><b>Stop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Travel at which the press was stopped.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Stop</em>' attribute.
	 * @see #setStop(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getPressDetails_Stop()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='1000' label='Stop' help='Travel at which the press was stopped.'"
	 * @generated
	 */
	Double getStop();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.PressDetails#getStop <em>Stop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Stop</em>' attribute.
	 * @see #getStop()
	 * @generated
	 */
	void setStop(Double value);

	/**
	 * Returns the value of the '<em><b>Tip</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Shape and size of what pressed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Tip</em>' attribute.
	 * @see #setTip(String)
	 * @see org.flexwright.testing.data.TestingDataPackage#getPressDetails_Tip()
	 * @model annotation="urn:flexwright:field label='Tip' help='Shape and size of what pressed.'"
	 * @generated
	 */
	String getTip();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.PressDetails#getTip <em>Tip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Tip</em>' attribute.
	 * @see #getTip()
	 * @generated
	 */
	void setTip(String value);

} // PressDetails
