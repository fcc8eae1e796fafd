using System.Globalization;
using Slantwise.Records.Checks;

namespace Slantwise.Records.Tests.Checks;

internal static class Sentences
{
    /// <summary>Holds findings to being whole sentences in both languages: every gap has something to fill it, and the two are not the same.</summary>
    public static void AreWhole(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
        {
            var english = finding.Sentence(CultureInfo.GetCultureInfo("en"));
            var spanish = finding.Sentence(CultureInfo.GetCultureInfo("es"));
            Assert.EndsWith(english[^1] == '?' ? "?" : ".", english);
            Assert.NotEqual(english, spanish);
        }
    }
}
