namespace Slantwise.Surface.Tests.Marks.Photos;

/// <summary>What the sheet lies on.</summary>
internal enum Table
{
    Dark,
    Middle,
    Light,
    Stripes,
    Checks,
    Scanner,
}
