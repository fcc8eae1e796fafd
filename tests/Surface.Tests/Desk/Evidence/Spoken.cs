using System.Globalization;

namespace Slantwise.Surface.Tests.Desk.Evidence;

/// <summary>A language for the length of a test.</summary>
internal sealed class Spoken : IDisposable
{
    private readonly (CultureInfo Numbers, CultureInfo Words) _before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);

    public Spoken(string language) => CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(language);

    public void Dispose() => (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = _before;
}
