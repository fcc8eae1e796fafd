using Slantwise.Engines.Marks;
using Slantwise.Records.Scans;

namespace Slantwise.Paper;

/// <summary>A form as it lies on a printed page.</summary>
/// <param name="Code">What its code says.</param>
/// <param name="Kept">Its layout, to be kept by its tag.</param>
/// <param name="Layout">Its layout, as it is kept.</param>
/// <param name="LeftMm">Its left edge on the page.</param>
/// <param name="TopMm">Its top edge on the page.</param>
/// <param name="ScaleFraction">How long a millimetre of the form is on the page; 1 for a form that fills it.</param>
public sealed record PrintedForm(SheetCode Code, PrintedLayout Kept, SheetLayout Layout, double LeftMm, double TopMm, double ScaleFraction);
