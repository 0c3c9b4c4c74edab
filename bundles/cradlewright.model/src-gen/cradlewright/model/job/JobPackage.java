/**
 */
package cradlewright.model.job;

import cradlewright.model.base.BasePackage;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * Jobs, people, bookings, hold points and sign-offs.
 * <!-- end-model-doc -->
 * @see cradlewright.model.job.JobFactory
 * @model kind="package"
 * @generated
 */
public interface JobPackage extends EPackage {
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "job";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "urn:cradlewright:job";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "job";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	JobPackage eINSTANCE = cradlewright.model.job.impl.JobPackageImpl.init();

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.JobBookImpl <em>Book</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.JobBookImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getJobBook()
	 * @generated
	 */
	int JOB_BOOK = 0;

	/**
	 * The feature id for the '<em><b>Schema</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK__SCHEMA = BasePackage.FILE_ROOT__SCHEMA;

	/**
	 * The feature id for the '<em><b>Draft</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK__DRAFT = BasePackage.FILE_ROOT__DRAFT;

	/**
	 * The feature id for the '<em><b>Jobs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK__JOBS = BasePackage.FILE_ROOT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>People</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK__PEOPLE = BasePackage.FILE_ROOT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Bookings</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK__BOOKINGS = BasePackage.FILE_ROOT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Hold Points</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK__HOLD_POINTS = BasePackage.FILE_ROOT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Calendars</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK__CALENDARS = BasePackage.FILE_ROOT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Waits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK__WAITS = BasePackage.FILE_ROOT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Book</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_BOOK_FEATURE_COUNT = BasePackage.FILE_ROOT_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.JobImpl <em>Job</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.JobImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getJob()
	 * @generated
	 */
	int JOB = 1;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Car</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB__CAR = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Due</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB__DUE = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Operations</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB__OPERATIONS = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Job</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int JOB_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.OperationImpl <em>Operation</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.OperationImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getOperation()
	 * @generated
	 */
	int OPERATION = 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__KIND = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Takes Off</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__TAKES_OFF = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Puts On</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__PUTS_ON = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Setup</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__SETUP = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Needs</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__NEEDS = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Best</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__BEST = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Likely</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__LIKELY = BasePackage.NAMED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Worst</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__WORST = BasePackage.NAMED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Started</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__STARTED = BasePackage.NAMED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Done</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__DONE = BasePackage.NAMED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>After</b></em>' reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION__AFTER = BasePackage.NAMED_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Operation</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OPERATION_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.PersonImpl <em>Person</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.PersonImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getPerson()
	 * @generated
	 */
	int PERSON = 3;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Skills</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON__SKILLS = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Person</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PERSON_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.BookingImpl <em>Booking</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.BookingImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getBooking()
	 * @generated
	 */
	int BOOKING = 4;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Operation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__OPERATION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Person</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__PERSON = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Place</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__PLACE = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Gear</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__GEAR = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__FROM = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING__TO = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Booking</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BOOKING_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.HoldPointImpl <em>Hold Point</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.HoldPointImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getHoldPoint()
	 * @generated
	 */
	int HOLD_POINT = 5;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_POINT__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_POINT__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_POINT__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Operation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_POINT__OPERATION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_POINT__TEXT = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sign Offs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_POINT__SIGN_OFFS = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Hold Point</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int HOLD_POINT_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.SignOffImpl <em>Sign Off</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.SignOffImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getSignOff()
	 * @generated
	 */
	int SIGN_OFF = 6;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__ID = BasePackage.IDENTIFIED__ID;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__BY = BasePackage.IDENTIFIED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__AT = BasePackage.IDENTIFIED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Digest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__DIGEST = BasePackage.IDENTIFIED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Visit</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__VISIT = BasePackage.IDENTIFIED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Program Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__PROGRAM_VERSION = BasePackage.IDENTIFIED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Findings Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__FINDINGS_TEXT = BasePackage.IDENTIFIED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Sign Off</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF_FEATURE_COUNT = BasePackage.IDENTIFIED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.CalendarImpl <em>Calendar</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.CalendarImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getCalendar()
	 * @generated
	 */
	int CALENDAR = 7;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALENDAR__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALENDAR__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALENDAR__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Person</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALENDAR__PERSON = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Hours ADay</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALENDAR__HOURS_ADAY = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Days Off</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALENDAR__DAYS_OFF = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Calendar</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CALENDAR_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.impl.WaitImpl <em>Wait</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.impl.WaitImpl
	 * @see cradlewright.model.job.impl.JobPackageImpl#getWait()
	 * @generated
	 */
	int WAIT = 8;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT__ID = BasePackage.NAMED__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT__NAME = BasePackage.NAMED__NAME;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT__NOTE = BasePackage.NAMED__NOTE;

	/**
	 * The feature id for the '<em><b>Operation</b></em>' reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT__OPERATION = BasePackage.NAMED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Reason</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT__REASON = BasePackage.NAMED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Since</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT__SINCE = BasePackage.NAMED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Until</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT__UNTIL = BasePackage.NAMED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Ended</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT__ENDED = BasePackage.NAMED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Wait</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WAIT_FEATURE_COUNT = BasePackage.NAMED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link cradlewright.model.job.OperationKind <em>Operation Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.OperationKind
	 * @see cradlewright.model.job.impl.JobPackageImpl#getOperationKind()
	 * @generated
	 */
	int OPERATION_KIND = 9;

	/**
	 * The meta object id for the '<em>Operation Kind Object</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see cradlewright.model.job.OperationKind
	 * @see cradlewright.model.job.impl.JobPackageImpl#getOperationKindObject()
	 * @generated
	 */
	int OPERATION_KIND_OBJECT = 10;


	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.JobBook <em>Book</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Book</em>'.
	 * @see cradlewright.model.job.JobBook
	 * @generated
	 */
	EClass getJobBook();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.job.JobBook#getJobs <em>Jobs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Jobs</em>'.
	 * @see cradlewright.model.job.JobBook#getJobs()
	 * @see #getJobBook()
	 * @generated
	 */
	EReference getJobBook_Jobs();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.job.JobBook#getPeople <em>People</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>People</em>'.
	 * @see cradlewright.model.job.JobBook#getPeople()
	 * @see #getJobBook()
	 * @generated
	 */
	EReference getJobBook_People();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.job.JobBook#getBookings <em>Bookings</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bookings</em>'.
	 * @see cradlewright.model.job.JobBook#getBookings()
	 * @see #getJobBook()
	 * @generated
	 */
	EReference getJobBook_Bookings();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.job.JobBook#getHoldPoints <em>Hold Points</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Hold Points</em>'.
	 * @see cradlewright.model.job.JobBook#getHoldPoints()
	 * @see #getJobBook()
	 * @generated
	 */
	EReference getJobBook_HoldPoints();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.job.JobBook#getCalendars <em>Calendars</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Calendars</em>'.
	 * @see cradlewright.model.job.JobBook#getCalendars()
	 * @see #getJobBook()
	 * @generated
	 */
	EReference getJobBook_Calendars();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.job.JobBook#getWaits <em>Waits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Waits</em>'.
	 * @see cradlewright.model.job.JobBook#getWaits()
	 * @see #getJobBook()
	 * @generated
	 */
	EReference getJobBook_Waits();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.Job <em>Job</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Job</em>'.
	 * @see cradlewright.model.job.Job
	 * @generated
	 */
	EClass getJob();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.Job#getCar <em>Car</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Car</em>'.
	 * @see cradlewright.model.job.Job#getCar()
	 * @see #getJob()
	 * @generated
	 */
	EReference getJob_Car();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Job#getDue <em>Due</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Due</em>'.
	 * @see cradlewright.model.job.Job#getDue()
	 * @see #getJob()
	 * @generated
	 */
	EAttribute getJob_Due();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.job.Job#getOperations <em>Operations</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Operations</em>'.
	 * @see cradlewright.model.job.Job#getOperations()
	 * @see #getJob()
	 * @generated
	 */
	EReference getJob_Operations();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.Operation <em>Operation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Operation</em>'.
	 * @see cradlewright.model.job.Operation
	 * @generated
	 */
	EClass getOperation();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Operation#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see cradlewright.model.job.Operation#getKind()
	 * @see #getOperation()
	 * @generated
	 */
	EAttribute getOperation_Kind();

	/**
	 * Returns the meta object for the reference list '{@link cradlewright.model.job.Operation#getTakesOff <em>Takes Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Takes Off</em>'.
	 * @see cradlewright.model.job.Operation#getTakesOff()
	 * @see #getOperation()
	 * @generated
	 */
	EReference getOperation_TakesOff();

	/**
	 * Returns the meta object for the reference list '{@link cradlewright.model.job.Operation#getPutsOn <em>Puts On</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>Puts On</em>'.
	 * @see cradlewright.model.job.Operation#getPutsOn()
	 * @see #getOperation()
	 * @generated
	 */
	EReference getOperation_PutsOn();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.Operation#getSetup <em>Setup</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Setup</em>'.
	 * @see cradlewright.model.job.Operation#getSetup()
	 * @see #getOperation()
	 * @generated
	 */
	EReference getOperation_Setup();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Operation#getNeeds <em>Needs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Needs</em>'.
	 * @see cradlewright.model.job.Operation#getNeeds()
	 * @see #getOperation()
	 * @generated
	 */
	EAttribute getOperation_Needs();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Operation#getBest <em>Best</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Best</em>'.
	 * @see cradlewright.model.job.Operation#getBest()
	 * @see #getOperation()
	 * @generated
	 */
	EAttribute getOperation_Best();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Operation#getLikely <em>Likely</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Likely</em>'.
	 * @see cradlewright.model.job.Operation#getLikely()
	 * @see #getOperation()
	 * @generated
	 */
	EAttribute getOperation_Likely();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Operation#getWorst <em>Worst</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Worst</em>'.
	 * @see cradlewright.model.job.Operation#getWorst()
	 * @see #getOperation()
	 * @generated
	 */
	EAttribute getOperation_Worst();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Operation#getStarted <em>Started</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Started</em>'.
	 * @see cradlewright.model.job.Operation#getStarted()
	 * @see #getOperation()
	 * @generated
	 */
	EAttribute getOperation_Started();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Operation#isDone <em>Done</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Done</em>'.
	 * @see cradlewright.model.job.Operation#isDone()
	 * @see #getOperation()
	 * @generated
	 */
	EAttribute getOperation_Done();

	/**
	 * Returns the meta object for the reference list '{@link cradlewright.model.job.Operation#getAfter <em>After</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference list '<em>After</em>'.
	 * @see cradlewright.model.job.Operation#getAfter()
	 * @see #getOperation()
	 * @generated
	 */
	EReference getOperation_After();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.Person <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Person</em>'.
	 * @see cradlewright.model.job.Person
	 * @generated
	 */
	EClass getPerson();

	/**
	 * Returns the meta object for the attribute list '{@link cradlewright.model.job.Person#getSkills <em>Skills</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Skills</em>'.
	 * @see cradlewright.model.job.Person#getSkills()
	 * @see #getPerson()
	 * @generated
	 */
	EAttribute getPerson_Skills();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.Booking <em>Booking</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Booking</em>'.
	 * @see cradlewright.model.job.Booking
	 * @generated
	 */
	EClass getBooking();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.Booking#getOperation <em>Operation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Operation</em>'.
	 * @see cradlewright.model.job.Booking#getOperation()
	 * @see #getBooking()
	 * @generated
	 */
	EReference getBooking_Operation();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.Booking#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Person</em>'.
	 * @see cradlewright.model.job.Booking#getPerson()
	 * @see #getBooking()
	 * @generated
	 */
	EReference getBooking_Person();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.Booking#getPlace <em>Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Place</em>'.
	 * @see cradlewright.model.job.Booking#getPlace()
	 * @see #getBooking()
	 * @generated
	 */
	EReference getBooking_Place();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.Booking#getGear <em>Gear</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Gear</em>'.
	 * @see cradlewright.model.job.Booking#getGear()
	 * @see #getBooking()
	 * @generated
	 */
	EReference getBooking_Gear();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Booking#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see cradlewright.model.job.Booking#getFrom()
	 * @see #getBooking()
	 * @generated
	 */
	EAttribute getBooking_From();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Booking#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see cradlewright.model.job.Booking#getTo()
	 * @see #getBooking()
	 * @generated
	 */
	EAttribute getBooking_To();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.HoldPoint <em>Hold Point</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Hold Point</em>'.
	 * @see cradlewright.model.job.HoldPoint
	 * @generated
	 */
	EClass getHoldPoint();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.HoldPoint#getOperation <em>Operation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Operation</em>'.
	 * @see cradlewright.model.job.HoldPoint#getOperation()
	 * @see #getHoldPoint()
	 * @generated
	 */
	EReference getHoldPoint_Operation();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.HoldPoint#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see cradlewright.model.job.HoldPoint#getText()
	 * @see #getHoldPoint()
	 * @generated
	 */
	EAttribute getHoldPoint_Text();

	/**
	 * Returns the meta object for the containment reference list '{@link cradlewright.model.job.HoldPoint#getSignOffs <em>Sign Offs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sign Offs</em>'.
	 * @see cradlewright.model.job.HoldPoint#getSignOffs()
	 * @see #getHoldPoint()
	 * @generated
	 */
	EReference getHoldPoint_SignOffs();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.SignOff <em>Sign Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sign Off</em>'.
	 * @see cradlewright.model.job.SignOff
	 * @generated
	 */
	EClass getSignOff();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.SignOff#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see cradlewright.model.job.SignOff#getBy()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_By();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.SignOff#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see cradlewright.model.job.SignOff#getAt()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_At();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.SignOff#getDigest <em>Digest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Digest</em>'.
	 * @see cradlewright.model.job.SignOff#getDigest()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_Digest();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.SignOff#getVisit <em>Visit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Visit</em>'.
	 * @see cradlewright.model.job.SignOff#getVisit()
	 * @see #getSignOff()
	 * @generated
	 */
	EReference getSignOff_Visit();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.SignOff#getProgramVersion <em>Program Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Program Version</em>'.
	 * @see cradlewright.model.job.SignOff#getProgramVersion()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_ProgramVersion();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.SignOff#getFindingsText <em>Findings Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Findings Text</em>'.
	 * @see cradlewright.model.job.SignOff#getFindingsText()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_FindingsText();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.Calendar <em>Calendar</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Calendar</em>'.
	 * @see cradlewright.model.job.Calendar
	 * @generated
	 */
	EClass getCalendar();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.Calendar#getPerson <em>Person</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Person</em>'.
	 * @see cradlewright.model.job.Calendar#getPerson()
	 * @see #getCalendar()
	 * @generated
	 */
	EReference getCalendar_Person();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Calendar#getHoursADay <em>Hours ADay</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hours ADay</em>'.
	 * @see cradlewright.model.job.Calendar#getHoursADay()
	 * @see #getCalendar()
	 * @generated
	 */
	EAttribute getCalendar_HoursADay();

	/**
	 * Returns the meta object for the attribute list '{@link cradlewright.model.job.Calendar#getDaysOff <em>Days Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Days Off</em>'.
	 * @see cradlewright.model.job.Calendar#getDaysOff()
	 * @see #getCalendar()
	 * @generated
	 */
	EAttribute getCalendar_DaysOff();

	/**
	 * Returns the meta object for class '{@link cradlewright.model.job.Wait <em>Wait</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wait</em>'.
	 * @see cradlewright.model.job.Wait
	 * @generated
	 */
	EClass getWait();

	/**
	 * Returns the meta object for the reference '{@link cradlewright.model.job.Wait#getOperation <em>Operation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the reference '<em>Operation</em>'.
	 * @see cradlewright.model.job.Wait#getOperation()
	 * @see #getWait()
	 * @generated
	 */
	EReference getWait_Operation();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Wait#getReason <em>Reason</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reason</em>'.
	 * @see cradlewright.model.job.Wait#getReason()
	 * @see #getWait()
	 * @generated
	 */
	EAttribute getWait_Reason();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Wait#getSince <em>Since</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Since</em>'.
	 * @see cradlewright.model.job.Wait#getSince()
	 * @see #getWait()
	 * @generated
	 */
	EAttribute getWait_Since();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Wait#getUntil <em>Until</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Until</em>'.
	 * @see cradlewright.model.job.Wait#getUntil()
	 * @see #getWait()
	 * @generated
	 */
	EAttribute getWait_Until();

	/**
	 * Returns the meta object for the attribute '{@link cradlewright.model.job.Wait#getEnded <em>Ended</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ended</em>'.
	 * @see cradlewright.model.job.Wait#getEnded()
	 * @see #getWait()
	 * @generated
	 */
	EAttribute getWait_Ended();

	/**
	 * Returns the meta object for enum '{@link cradlewright.model.job.OperationKind <em>Operation Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Operation Kind</em>'.
	 * @see cradlewright.model.job.OperationKind
	 * @generated
	 */
	EEnum getOperationKind();

	/**
	 * Returns the meta object for data type '{@link cradlewright.model.job.OperationKind <em>Operation Kind Object</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * OperationKind, or nothing when nobody said.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Operation Kind Object</em>'.
	 * @see cradlewright.model.job.OperationKind
	 * @model instanceClass="cradlewright.model.job.OperationKind"
	 *        extendedMetaData="name='OperationKind:Object' baseType='OperationKind'"
	 * @generated
	 */
	EDataType getOperationKindObject();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	JobFactory getJobFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals {
		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.JobBookImpl <em>Book</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.JobBookImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getJobBook()
		 * @generated
		 */
		EClass JOB_BOOK = eINSTANCE.getJobBook();

		/**
		 * The meta object literal for the '<em><b>Jobs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOB_BOOK__JOBS = eINSTANCE.getJobBook_Jobs();

		/**
		 * The meta object literal for the '<em><b>People</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOB_BOOK__PEOPLE = eINSTANCE.getJobBook_People();

		/**
		 * The meta object literal for the '<em><b>Bookings</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOB_BOOK__BOOKINGS = eINSTANCE.getJobBook_Bookings();

		/**
		 * The meta object literal for the '<em><b>Hold Points</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOB_BOOK__HOLD_POINTS = eINSTANCE.getJobBook_HoldPoints();

		/**
		 * The meta object literal for the '<em><b>Calendars</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOB_BOOK__CALENDARS = eINSTANCE.getJobBook_Calendars();

		/**
		 * The meta object literal for the '<em><b>Waits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOB_BOOK__WAITS = eINSTANCE.getJobBook_Waits();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.JobImpl <em>Job</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.JobImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getJob()
		 * @generated
		 */
		EClass JOB = eINSTANCE.getJob();

		/**
		 * The meta object literal for the '<em><b>Car</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOB__CAR = eINSTANCE.getJob_Car();

		/**
		 * The meta object literal for the '<em><b>Due</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute JOB__DUE = eINSTANCE.getJob_Due();

		/**
		 * The meta object literal for the '<em><b>Operations</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference JOB__OPERATIONS = eINSTANCE.getJob_Operations();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.OperationImpl <em>Operation</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.OperationImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getOperation()
		 * @generated
		 */
		EClass OPERATION = eINSTANCE.getOperation();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPERATION__KIND = eINSTANCE.getOperation_Kind();

		/**
		 * The meta object literal for the '<em><b>Takes Off</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OPERATION__TAKES_OFF = eINSTANCE.getOperation_TakesOff();

		/**
		 * The meta object literal for the '<em><b>Puts On</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OPERATION__PUTS_ON = eINSTANCE.getOperation_PutsOn();

		/**
		 * The meta object literal for the '<em><b>Setup</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OPERATION__SETUP = eINSTANCE.getOperation_Setup();

		/**
		 * The meta object literal for the '<em><b>Needs</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPERATION__NEEDS = eINSTANCE.getOperation_Needs();

		/**
		 * The meta object literal for the '<em><b>Best</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPERATION__BEST = eINSTANCE.getOperation_Best();

		/**
		 * The meta object literal for the '<em><b>Likely</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPERATION__LIKELY = eINSTANCE.getOperation_Likely();

		/**
		 * The meta object literal for the '<em><b>Worst</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPERATION__WORST = eINSTANCE.getOperation_Worst();

		/**
		 * The meta object literal for the '<em><b>Started</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPERATION__STARTED = eINSTANCE.getOperation_Started();

		/**
		 * The meta object literal for the '<em><b>Done</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OPERATION__DONE = eINSTANCE.getOperation_Done();

		/**
		 * The meta object literal for the '<em><b>After</b></em>' reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference OPERATION__AFTER = eINSTANCE.getOperation_After();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.PersonImpl <em>Person</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.PersonImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getPerson()
		 * @generated
		 */
		EClass PERSON = eINSTANCE.getPerson();

		/**
		 * The meta object literal for the '<em><b>Skills</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PERSON__SKILLS = eINSTANCE.getPerson_Skills();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.BookingImpl <em>Booking</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.BookingImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getBooking()
		 * @generated
		 */
		EClass BOOKING = eINSTANCE.getBooking();

		/**
		 * The meta object literal for the '<em><b>Operation</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BOOKING__OPERATION = eINSTANCE.getBooking_Operation();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BOOKING__PERSON = eINSTANCE.getBooking_Person();

		/**
		 * The meta object literal for the '<em><b>Place</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BOOKING__PLACE = eINSTANCE.getBooking_Place();

		/**
		 * The meta object literal for the '<em><b>Gear</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BOOKING__GEAR = eINSTANCE.getBooking_Gear();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOOKING__FROM = eINSTANCE.getBooking_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BOOKING__TO = eINSTANCE.getBooking_To();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.HoldPointImpl <em>Hold Point</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.HoldPointImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getHoldPoint()
		 * @generated
		 */
		EClass HOLD_POINT = eINSTANCE.getHoldPoint();

		/**
		 * The meta object literal for the '<em><b>Operation</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HOLD_POINT__OPERATION = eINSTANCE.getHoldPoint_Operation();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute HOLD_POINT__TEXT = eINSTANCE.getHoldPoint_Text();

		/**
		 * The meta object literal for the '<em><b>Sign Offs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference HOLD_POINT__SIGN_OFFS = eINSTANCE.getHoldPoint_SignOffs();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.SignOffImpl <em>Sign Off</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.SignOffImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getSignOff()
		 * @generated
		 */
		EClass SIGN_OFF = eINSTANCE.getSignOff();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__BY = eINSTANCE.getSignOff_By();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__AT = eINSTANCE.getSignOff_At();

		/**
		 * The meta object literal for the '<em><b>Digest</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__DIGEST = eINSTANCE.getSignOff_Digest();

		/**
		 * The meta object literal for the '<em><b>Visit</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SIGN_OFF__VISIT = eINSTANCE.getSignOff_Visit();

		/**
		 * The meta object literal for the '<em><b>Program Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__PROGRAM_VERSION = eINSTANCE.getSignOff_ProgramVersion();

		/**
		 * The meta object literal for the '<em><b>Findings Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__FINDINGS_TEXT = eINSTANCE.getSignOff_FindingsText();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.CalendarImpl <em>Calendar</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.CalendarImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getCalendar()
		 * @generated
		 */
		EClass CALENDAR = eINSTANCE.getCalendar();

		/**
		 * The meta object literal for the '<em><b>Person</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CALENDAR__PERSON = eINSTANCE.getCalendar_Person();

		/**
		 * The meta object literal for the '<em><b>Hours ADay</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALENDAR__HOURS_ADAY = eINSTANCE.getCalendar_HoursADay();

		/**
		 * The meta object literal for the '<em><b>Days Off</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CALENDAR__DAYS_OFF = eINSTANCE.getCalendar_DaysOff();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.impl.WaitImpl <em>Wait</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.impl.WaitImpl
		 * @see cradlewright.model.job.impl.JobPackageImpl#getWait()
		 * @generated
		 */
		EClass WAIT = eINSTANCE.getWait();

		/**
		 * The meta object literal for the '<em><b>Operation</b></em>' reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference WAIT__OPERATION = eINSTANCE.getWait_Operation();

		/**
		 * The meta object literal for the '<em><b>Reason</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIT__REASON = eINSTANCE.getWait_Reason();

		/**
		 * The meta object literal for the '<em><b>Since</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIT__SINCE = eINSTANCE.getWait_Since();

		/**
		 * The meta object literal for the '<em><b>Until</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIT__UNTIL = eINSTANCE.getWait_Until();

		/**
		 * The meta object literal for the '<em><b>Ended</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WAIT__ENDED = eINSTANCE.getWait_Ended();

		/**
		 * The meta object literal for the '{@link cradlewright.model.job.OperationKind <em>Operation Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.OperationKind
		 * @see cradlewright.model.job.impl.JobPackageImpl#getOperationKind()
		 * @generated
		 */
		EEnum OPERATION_KIND = eINSTANCE.getOperationKind();

		/**
		 * The meta object literal for the '<em>Operation Kind Object</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see cradlewright.model.job.OperationKind
		 * @see cradlewright.model.job.impl.JobPackageImpl#getOperationKindObject()
		 * @generated
		 */
		EDataType OPERATION_KIND_OBJECT = eINSTANCE.getOperationKindObject();

	}

} //JobPackage
