using Slantwise.Engines.Marks;

namespace Slantwise.Records.Scans.Intake;

/// <summary>A form somebody could have photographed.</summary>
/// <param name="LayoutTag">Its layout's tag.</param>
/// <param name="Layout">The layout.</param>
public sealed record KnownForm(long LayoutTag, SheetLayout Layout);
