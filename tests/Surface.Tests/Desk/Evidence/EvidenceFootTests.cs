using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Records.Evidence.Tables;

namespace Slantwise.Surface.Tests.Desk.Evidence;

/// <summary>The foot of an evidence page names every table: one without words fails only when somebody opens the page.</summary>
public sealed class EvidenceFootTests
{
    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Tables_EveryKey_HasAName(string language) =>
        Assert.All(EvidenceTables.Keys, key => Assert.NotEmpty(UnitWords.Text("Table-" + key, CultureInfo.GetCultureInfo(language))));
}
