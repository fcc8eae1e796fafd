using System.Collections;
using System.Globalization;
using System.Resources;
using Slantwise.Records.Schools;
using Slantwise.Records.Words;

namespace Slantwise.Records.Tests.Words;

public sealed class SafetyTermsTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es");

    [Fact]
    public void Of_EveryCondition_HasWordsInBothLanguagesAndNoWordsAreLeftOver()
    {
        foreach (var language in new[] { CultureInfo.InvariantCulture, Spanish })
        {
            var keys = new ResourceManager(typeof(SafetyTerms)).GetResourceSet(language, createIfNotExists: true, tryParents: false)!.Cast<DictionaryEntry>().Select(e => (string)e.Key);
            Assert.Equal(Enum.GetNames<SafetyCondition>().Select(n => "Condition" + n).Append("HeadWeight").Order(StringComparer.Ordinal), keys.Order(StringComparer.Ordinal));
        }
    }

    [Fact]
    public void HeadWeight_SomeConditions_NamesThemInTheirOrderAndTheCap() => Assert.Equal(
        "Weight on the head only where mats lie under and around; parents were told. Holds of at most 3 s.",
        SafetyTerms.HeadWeight(new SafetyPolicy { HeadConditions = [SafetyCondition.ParentsTold, SafetyCondition.MatsAround], HeadHoldCapS = 3 }, English));
}
