/**
 */
package org.flexwright.model;

import java.time.Instant;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EObject;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Recording</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A file of an instrument as it came in, how it is to be read, and the marks put on it. Everything else is computed from these.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.flexwright.model.Recording#getKind <em>Kind</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getCode <em>Code</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getTitle <em>Title</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getAt <em>At</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getFile <em>File</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getSession <em>Session</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getInstrument <em>Instrument</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getSeparator <em>Separator</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getDecimalComma <em>Decimal Comma</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getSkipLines <em>Skip Lines</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getCycle <em>Cycle</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getLeftOut <em>Left Out</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getChannels <em>Channels</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getMarks <em>Marks</em>}</li>
 *   <li>{@link org.flexwright.model.Recording#getDetails <em>Details</em>}</li>
 * </ul>
 *
 * @see org.flexwright.model.ModelPackage#getRecording()
 * @model
 * @generated
 */
public interface Recording extends Entry {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Id of the recording kind whose details are kept.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see #setKind(String)
	 * @see org.flexwright.model.ModelPackage#getRecording_Kind()
	 * @model annotation="urn:flexwright:field label='Kind' help='Id of the recording kind whose details are kept.'"
	 * @generated
	 */
	String getKind();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see #getKind()
	 * @generated
	 */
	void setKind(String value);

	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.flexwright.model.ModelPackage#getRecording_Code()
	 * @model annotation="urn:flexwright:field label='Recording'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Title</em>' attribute.
	 * @see #setTitle(String)
	 * @see org.flexwright.model.ModelPackage#getRecording_Title()
	 * @model annotation="urn:flexwright:field label='Title'"
	 * @generated
	 */
	String getTitle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getTitle <em>Title</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Title</em>' attribute.
	 * @see #getTitle()
	 * @generated
	 */
	void setTitle(String value);

	/**
	 * Returns the value of the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>At</em>' attribute.
	 * @see #setAt(Instant)
	 * @see org.flexwright.model.ModelPackage#getRecording_At()
	 * @model dataType="org.flexwright.model.Instant"
	 *        annotation="urn:flexwright:field label='Recorded at'"
	 * @generated
	 */
	Instant getAt();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getAt <em>At</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>At</em>' attribute.
	 * @see #getAt()
	 * @generated
	 */
	void setAt(Instant value);

	/**
	 * Returns the value of the '<em><b>File</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The raw file, unchanged.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>File</em>' reference.
	 * @see #setFile(Attachment)
	 * @see org.flexwright.model.ModelPackage#getRecording_File()
	 * @model
	 * @generated
	 */
	Attachment getFile();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getFile <em>File</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>File</em>' reference.
	 * @see #getFile()
	 * @generated
	 */
	void setFile(Attachment value);

	/**
	 * Returns the value of the '<em><b>Session</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Session</em>' reference.
	 * @see #setSession(Session)
	 * @see org.flexwright.model.ModelPackage#getRecording_Session()
	 * @model
	 * @generated
	 */
	Session getSession();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getSession <em>Session</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Session</em>' reference.
	 * @see #getSession()
	 * @generated
	 */
	void setSession(Session value);

	/**
	 * Returns the value of the '<em><b>Instrument</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instrument</em>' reference.
	 * @see #setInstrument(Instrument)
	 * @see org.flexwright.model.ModelPackage#getRecording_Instrument()
	 * @model
	 * @generated
	 */
	Instrument getInstrument();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getInstrument <em>Instrument</em>}' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Instrument</em>' reference.
	 * @see #getInstrument()
	 * @generated
	 */
	void setInstrument(Instrument value);

	/**
	 * Returns the value of the '<em><b>Separator</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What stands between two columns: one character, or the words tab or blanks.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Separator</em>' attribute.
	 * @see #setSeparator(String)
	 * @see org.flexwright.model.ModelPackage#getRecording_Separator()
	 * @model annotation="urn:flexwright:field label='Separator' help='What stands between two columns: one character, or the words tab or blanks.'"
	 * @generated
	 */
	String getSeparator();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getSeparator <em>Separator</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Separator</em>' attribute.
	 * @see #getSeparator()
	 * @generated
	 */
	void setSeparator(String value);

	/**
	 * Returns the value of the '<em><b>Decimal Comma</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Whether 2,5 is two and a half.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Decimal Comma</em>' attribute.
	 * @see #setDecimalComma(Boolean)
	 * @see org.flexwright.model.ModelPackage#getRecording_DecimalComma()
	 * @model annotation="urn:flexwright:field label='Decimal comma' help='Whether 2,5 is two and a half.'"
	 * @generated
	 */
	Boolean getDecimalComma();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getDecimalComma <em>Decimal Comma</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Decimal Comma</em>' attribute.
	 * @see #getDecimalComma()
	 * @generated
	 */
	void setDecimalComma(Boolean value);

	/**
	 * Returns the value of the '<em><b>Skip Lines</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Lines at the top that hold no figures.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Skip Lines</em>' attribute.
	 * @see #setSkipLines(Integer)
	 * @see org.flexwright.model.ModelPackage#getRecording_SkipLines()
	 * @model annotation="urn:flexwright:field min='0' max='100000' label='Lines before the figures' help='Lines at the top that hold no figures.'"
	 * @generated
	 */
	Integer getSkipLines();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getSkipLines <em>Skip Lines</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Skip Lines</em>' attribute.
	 * @see #getSkipLines()
	 * @generated
	 */
	void setSkipLines(Integer value);

	/**
	 * Returns the value of the '<em><b>Cycle</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Which loading of the piece this is; the first one differs from the later ones.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Cycle</em>' attribute.
	 * @see #setCycle(Integer)
	 * @see org.flexwright.model.ModelPackage#getRecording_Cycle()
	 * @model annotation="urn:flexwright:field min='1' max='1000000' label='Cycle' help='Which loading of the piece this is; the first one differs from the later ones.'"
	 * @generated
	 */
	Integer getCycle();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getCycle <em>Cycle</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Cycle</em>' attribute.
	 * @see #getCycle()
	 * @generated
	 */
	void setCycle(Integer value);

	/**
	 * Returns the value of the '<em><b>Left Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Why it does not count; empty when it counts.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Left Out</em>' attribute.
	 * @see #setLeftOut(String)
	 * @see org.flexwright.model.ModelPackage#getRecording_LeftOut()
	 * @model annotation="urn:flexwright:field label='Left out because' help='Why it does not count; empty when it counts.'"
	 * @generated
	 */
	String getLeftOut();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getLeftOut <em>Left Out</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Left Out</em>' attribute.
	 * @see #getLeftOut()
	 * @generated
	 */
	void setLeftOut(String value);

	/**
	 * Returns the value of the '<em><b>Channels</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.RecordingChannel}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Channels</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecording_Channels()
	 * @model containment="true"
	 * @generated
	 */
	EList<RecordingChannel> getChannels();

	/**
	 * Returns the value of the '<em><b>Marks</b></em>' containment reference list.
	 * The list contents are of type {@link org.flexwright.model.RecordingMark}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Marks</em>' containment reference list.
	 * @see org.flexwright.model.ModelPackage#getRecording_Marks()
	 * @model containment="true"
	 * @generated
	 */
	EList<RecordingMark> getMarks();

	/**
	 * Returns the value of the '<em><b>Details</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Details</em>' containment reference.
	 * @see #setDetails(EObject)
	 * @see org.flexwright.model.ModelPackage#getRecording_Details()
	 * @model containment="true"
	 * @generated
	 */
	EObject getDetails();

	/**
	 * Sets the value of the '{@link org.flexwright.model.Recording#getDetails <em>Details</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Details</em>' containment reference.
	 * @see #getDetails()
	 * @generated
	 */
	void setDetails(EObject value);

} // Recording
