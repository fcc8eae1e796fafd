namespace Slantwise.Records.Scans.Intake;

/// <summary>What there is to say about a file or a page as a whole. Its sentence is in <c>Words/ScanWords.resx</c> under its name.</summary>
public enum ScanRemarkKind
{
    /// <summary>The file has no bytes.</summary>
    FileEmpty = 1,

    /// <summary>The file has more bytes than are read; details: megabytes allowed.</summary>
    FileTooLarge = 2,

    /// <summary>Neither a JPEG, a PNG nor a PDF.</summary>
    FileKind = 3,

    /// <summary>It begins like one and cannot be read to its end.</summary>
    FileDamaged = 4,

    /// <summary>More pixels than are read; details: width, height, megapixels allowed.</summary>
    PictureTooLarge = 5,

    /// <summary>Too few pixels to hold a sheet; details: width, height.</summary>
    PictureTooSmall = 6,

    /// <summary>More pages than are read; those after were passed over. Details: pages read, pages there are.</summary>
    TooManyPages = 7,

    /// <summary>The file took longer than is allowed; what was left was passed over. Details: seconds.</summary>
    TooSlow = 8,

    /// <summary>The PDF asks for a password.</summary>
    PdfLocked = 9,

    /// <summary>The page of a PDF holds no picture of a page.</summary>
    PdfWithoutPicture = 10,

    /// <summary>The page of a PDF is packed in a way that needs poppler's pdftoppm, which is not on this machine.</summary>
    PdfNeedsPoppler = 11,

    /// <summary>The file could not be opened; details: why.</summary>
    FileNotOpened = 12,

    /// <summary>No code was seen, and no form that could be read without one.</summary>
    NoForm = 20,

    /// <summary>The form was read and its code was not: the pupil must be picked.</summary>
    NoCode = 21,

    /// <summary>The code belongs to another school.</summary>
    OtherSchool = 22,

    /// <summary>The code is no sheet's.</summary>
    ForeignCode = 23,

    /// <summary>The code names a lesson that is not here.</summary>
    LessonUnknown = 24,

    /// <summary>The code names a pupil who is not here.</summary>
    PupilUnknown = 25,

    /// <summary>The code names a form that is not kept here.</summary>
    LayoutUnknown = 26,

    /// <summary>Too few of the black squares were found.</summary>
    FormNotFound = 30,

    /// <summary>Too few pixels a millimetre.</summary>
    FormTooSmall = 31,

    /// <summary>Too blurred.</summary>
    FormBlurred = 32,

    /// <summary>Too dark, too pale, glare or shadow.</summary>
    FormBadLight = 33,

    /// <summary>Part of it lies outside the picture.</summary>
    FormCutOff = 34,

    /// <summary>The page belongs to another lesson than the one asked for; details: class, day.</summary>
    OtherLesson = 40,

    /// <summary>The pupil is not in the lesson's class now; details: the pupil's code.</summary>
    NotInClass = 41,

    /// <summary>The pupil is marked absent and the sheet has marks.</summary>
    MarkedAbsent = 42,

    /// <summary>A sheet without a name: the pupil must be picked; details: its number.</summary>
    SpareSheet = 43,

    /// <summary>Printed from an older version of the sheet; details: its version, the lesson's.</summary>
    OldVersion = 44,

    /// <summary>The lesson has no printed or opened sheet.</summary>
    NoSheet = 45,

    /// <summary>This page was read before, and it said nothing new.</summary>
    ReadBefore = 50,

    /// <summary>Nothing is marked on it.</summary>
    NothingMarked = 51,

    /// <summary>The rows of an observation sheet cannot be told: the class has changed since it was printed.</summary>
    RowsUnknown = 52,
}
