using Slantwise.Engines.Marks;

namespace Slantwise.Records.Scans.Intake;

/// <summary>A form found on a page.</summary>
/// <param name="CodeFound">What became of its code.</param>
/// <param name="Code">What the code says; none unless it is one of this school's.</param>
/// <param name="LayoutTag">The form it was read as; none where that is not known.</param>
/// <param name="Layout">Its layout; none where that is not known.</param>
/// <param name="Reading">What its fields show.</param>
public sealed record ReadForm(CodeFound CodeFound, SheetCode? Code, long? LayoutTag, SheetLayout? Layout, FormReading Reading);
