/**
 */
package org.flexwright.testing.data;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Film Details</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * How a movement was taken from single pictures.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.testing.data.FilmDetails#getFrameRate <em>Frame Rate</em>}</li>
 *   <li>{@link org.flexwright.testing.data.FilmDetails#getPixelsPerMm <em>Pixels Per Mm</em>}</li>
 *   <li>{@link org.flexwright.testing.data.FilmDetails#getHeightDown <em>Height Down</em>}</li>
 * </ul>
 *
 * @see org.flexwright.testing.data.TestingDataPackage#getFilmDetails()
 * @model
 * @generated
 */
public interface FilmDetails extends EObject {
	/**
	 * Returns the value of the '<em><b>Frame Rate</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * As it was recorded, not as it is played.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Frame Rate</em>' attribute.
	 * @see #setFrameRate(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getFilmDetails_FrameRate()
	 * @model annotation="urn:flexwright:field kind='FREQUENCY' unit='Hz' min='0' max='1000000' minOpen='true' label='Pictures a second' help='As it was recorded, not as it is played.'"
	 * @generated
	 */
	Double getFrameRate();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.FilmDetails#getFrameRate <em>Frame Rate</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Frame Rate</em>' attribute.
	 * @see #getFrameRate()
	 * @generated
	 */
	void setFrameRate(Double value);

	/**
	 * Returns the value of the '<em><b>Pixels Per Mm</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Read on something of known length in the plane of the motion.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Pixels Per Mm</em>' attribute.
	 * @see #setPixelsPerMm(Double)
	 * @see org.flexwright.testing.data.TestingDataPackage#getFilmDetails_PixelsPerMm()
	 * @model annotation="urn:flexwright:field min='0' max='100000' minOpen='true' label='Pixels a millimetre' help='Read on something of known length in the plane of the motion.'"
	 * @generated
	 */
	Double getPixelsPerMm();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.FilmDetails#getPixelsPerMm <em>Pixels Per Mm</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Pixels Per Mm</em>' attribute.
	 * @see #getPixelsPerMm()
	 * @generated
	 */
	void setPixelsPerMm(Double value);

	/**
	 * Returns the value of the '<em><b>Height Down</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether pixels are counted downwards.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Height Down</em>' attribute.
	 * @see #setHeightDown(Boolean)
	 * @see org.flexwright.testing.data.TestingDataPackage#getFilmDetails_HeightDown()
	 * @model annotation="urn:flexwright:field label='Counted from the top' help='Whether pixels are counted downwards.'"
	 * @generated
	 */
	Boolean getHeightDown();

	/**
	 * Sets the value of the '{@link org.flexwright.testing.data.FilmDetails#getHeightDown <em>Height Down</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Height Down</em>' attribute.
	 * @see #getHeightDown()
	 * @generated
	 */
	void setHeightDown(Boolean value);

} // FilmDetails
