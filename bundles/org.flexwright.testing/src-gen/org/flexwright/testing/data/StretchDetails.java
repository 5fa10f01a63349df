/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stretch Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a piece was stretched.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getLoading <em>Loading</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getPiece <em>Piece</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getGaugeLength <em>Gauge Length</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getWidth <em>Width</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getThickness <em>Thickness</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getSpeed <em>Speed</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getSlack <em>Slack</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getZeroForce <em>Zero Force</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getBroke <em>Broke</em>}</li>
 *   <li>{@link org.flexwright.testing.data.StretchDetails#getBrokeInGrip <em>Broke In Grip</em>}</li>
 * </ul>
 *
 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails()
 * @model
 * @generated
 */
public interface StretchDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Loading</b></em>' attribute.
	 * The literals are from the enumeration {@link org.flexwright.testing.data.StretchLoading}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Uniaxial, equibiaxial or planar.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Loading</em>' attribute.
	 * @see org.flexwright.testing.data.StretchLoading
	 * @see #setLoading(StretchLoading)
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_Loading()
	 * @model annotation="urn:flexwright:field label='Loading' help='Uniaxial, equibiaxial or planar.'"
	 * @generated
	 */
	StretchLoading getLoading();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getLoading <em>Loading</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Loading</em>' attribute.
	 * @see org.flexwright.testing.data.StretchLoading
	 * @see #getLoading()
	 * @generated
	 */
	void setLoading(StretchLoading value);

	/**
	 * Returns the value of the '<em><b>Piece</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Type of the dumbbell or strip, such as ISO 37 type 2.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Piece</em>' attribute.
	 * @see #setPiece(String)
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_Piece()
	 * @model annotation="urn:flexwright:field label='Piece' help='Type of the dumbbell or strip, such as ISO 37 type 2.'"
	 * @generated
	 */
	String getPiece();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getPiece <em>Piece</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Piece</em>' attribute.
	 * @see #getPiece()
	 * @generated
	 */
	void setPiece(String value);

	/**
	 * Returns the value of the '<em><b>Gauge Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Undeformed length between the marks, or between the grips when there are none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Gauge Length</em>' attribute.
	 * @see #setGaugeLength(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_GaugeLength()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='1000' minOpen='true' label='Gauge length' help='Undeformed length between the marks, or between the grips when there are none.'"
	 * @generated
	 */
	Double getGaugeLength();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getGaugeLength <em>Gauge Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Gauge Length</em>' attribute.
	 * @see #getGaugeLength()
	 * @generated
	 */
	void setGaugeLength(Double value);

	/**
	 * Returns the value of the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Undeformed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Width</em>' attribute.
	 * @see #setWidth(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_Width()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='1000' minOpen='true' label='Width' help='Undeformed.'"
	 * @generated
	 */
	Double getWidth();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getWidth <em>Width</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Width</em>' attribute.
	 * @see #getWidth()
	 * @generated
	 */
	void setWidth(Double value);

	/**
	 * Returns the value of the '<em><b>Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Undeformed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Thickness</em>' attribute.
	 * @see #setThickness(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_Thickness()
	 * @model annotation="urn:flexwright:field kind='LENGTH' unit='mm' min='0' max='1000' minOpen='true' label='Thickness' help='Undeformed.'"
	 * @generated
	 */
	Double getThickness();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getThickness <em>Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Thickness</em>' attribute.
	 * @see #getThickness()
	 * @generated
	 */
	void setThickness(Double value);

	/**
	 * Returns the value of the '<em><b>Speed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Of the grips.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Speed</em>' attribute.
	 * @see #setSpeed(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_Speed()
	 * @model annotation="urn:flexwright:field kind='SPEED' unit='mm/min' min='0' max='100000' label='Speed' help='Of the grips.'"
	 * @generated
	 */
	Double getSpeed();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getSpeed <em>Speed</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Speed</em>' attribute.
	 * @see #getSpeed()
	 * @generated
	 */
	void setSpeed(Double value);

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
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_Slack()
	 * @model annotation="urn:flexwright:field label='Slack' help='How the place where the force begins is found.'"
	 * @generated
	 */
	Slack getSlack();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getSlack <em>Slack</em>}' attribute.
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
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_ZeroForce()
	 * @model annotation="urn:flexwright:field kind='FORCE' unit='N' min='-10000' max='10000' label='Force at rest' help='What the gauge showed with nothing on it; taken off.'"
	 * @generated
	 */
	Double getZeroForce();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getZeroForce <em>Zero Force</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Zero Force</em>' attribute.
	 * @see #getZeroForce()
	 * @generated
	 */
	void setZeroForce(Double value);

	/**
	 * Returns the value of the '<em><b>Broke</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether the piece broke at the end.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Broke</em>' attribute.
	 * @see #setBroke(Boolean)
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_Broke()
	 * @model annotation="urn:flexwright:field label='Broke' help='Whether the piece broke at the end.'"
	 * @generated
	 */
	Boolean getBroke();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getBroke <em>Broke</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Broke</em>' attribute.
	 * @see #getBroke()
	 * @generated
	 */
	void setBroke(Boolean value);

	/**
	 * Returns the value of the '<em><b>Broke In Grip</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Then strength and stretch at break are not valid.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Broke In Grip</em>' attribute.
	 * @see #setBrokeInGrip(Boolean)
	 * @see org.flexwright.testing.data.TestingDataPackage#getStretchDetails_BrokeInGrip()
	 * @model annotation="urn:flexwright:field label='Broke in the grip' help='Then strength and stretch at break are not valid.'"
	 * @generated
	 */
	Boolean getBrokeInGrip();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.StretchDetails#getBrokeInGrip <em>Broke In Grip</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Broke In Grip</em>' attribute.
	 * @see #getBrokeInGrip()
	 * @generated
	 */
	void setBrokeInGrip(Boolean value);

} // StretchDetails
