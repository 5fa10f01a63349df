/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Bounce Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a fall was recorded by its sound.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.BounceDetails#getChannel <em>Channel</em>}</li>
 *   <li>{@link org.flexwright.testing.data.BounceDetails#getDrop <em>Drop</em>}</li>
 *   <li>{@link org.flexwright.testing.data.BounceDetails#getWhat <em>What</em>}</li>
 *   <li>{@link org.flexwright.testing.data.BounceDetails#getThreshold <em>Threshold</em>}</li>
 *   <li>{@link org.flexwright.testing.data.BounceDetails#getQuiet <em>Quiet</em>}</li>
 * </ul>
 *
 * @see org.flexwright.testing.data.TestingDataPackage#getBounceDetails()
 * @model
 * @generated
 */
public interface BounceDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Channel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Counted from 1; empty: all mixed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Channel</em>' attribute.
	 * @see #setChannel(Integer)
	 * @see org.flexwright.testing.data.TestingDataPackage#getBounceDetails_Channel()
	 * @model annotation="urn:flexwright:field min='1' max='64' label='Channel' help='Counted from 1; empty: all mixed.'"
	 * @generated
	 */
	Integer getChannel();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.BounceDetails#getChannel <em>Channel</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Channel</em>' attribute.
	 * @see #getChannel()
	 * @generated
	 */
	void setChannel(Integer value);

	/**
	 * Returns the value of the '<em><b>Drop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * From the lower side of what fell to the surface, for comparison with the sounds.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Drop</em>' attribute.
	 * @see #setDrop(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getBounceDetails_Drop()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='100000' minOpen='true' label='Drop height' help='From the lower side of what fell to the surface, for comparison with the sounds.'"
	 * @generated
	 */
	Double getDrop();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.BounceDetails#getDrop <em>Drop</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Drop</em>' attribute.
	 * @see #getDrop()
	 * @generated
	 */
	void setDrop(Double value);

	/**
	 * Returns the value of the '<em><b>What</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The part on a hard plate, or a ball on the part.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>What</em>' attribute.
	 * @see #setWhat(String)
	 * @see org.flexwright.testing.data.TestingDataPackage#getBounceDetails_What()
	 * @model annotation="urn:flexwright:field label='What fell' help='The part on a hard plate, or a ball on the part.'"
	 * @generated
	 */
	String getWhat();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.BounceDetails#getWhat <em>What</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>What</em>' attribute.
	 * @see #getWhat()
	 * @generated
	 */
	void setWhat(String value);

	/**
	 * Returns the value of the '<em><b>Threshold</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many times the background an impact stands out.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Threshold</em>' attribute.
	 * @see #setThreshold(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getBounceDetails_Threshold()
	 * @model annotation="urn:flexwright:field min='1' max='10000' label='Loudness of an impact' help='How many times the background an impact stands out.'"
	 * @generated
	 */
	Double getThreshold();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.BounceDetails#getThreshold <em>Threshold</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Threshold</em>' attribute.
	 * @see #getThreshold()
	 * @generated
	 */
	void setThreshold(Double value);

	/**
	 * Returns the value of the '<em><b>Quiet</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Two impacts are at least so far apart.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quiet</em>' attribute.
	 * @see #setQuiet(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getBounceDetails_Quiet()
	 * @model annotation="urn:flexwright:field kind='DURATION' unit='ms' min='0' max='10000' label='Not twice within' help='Two impacts are at least so far apart.'"
	 * @generated
	 */
	Double getQuiet();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.BounceDetails#getQuiet <em>Quiet</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quiet</em>' attribute.
	 * @see #getQuiet()
	 * @generated
	 */
	void setQuiet(Double value);

} // BounceDetails
