using Slantwise.Engines.Drawing;

namespace Slantwise.Paper;

/// <summary>A page to print, and the forms on it that can be read back.</summary>
/// <param name="Scene">What is printed.</param>
/// <param name="Forms">From left to right; empty for a page that is not read.</param>
public sealed record PrintedPage(Scene Scene, IReadOnlyList<PrintedForm> Forms);
