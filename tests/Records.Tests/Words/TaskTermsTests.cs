using System.Collections;
using System.Globalization;
using System.Resources;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Files;
using Slantwise.Records.Words;

namespace Slantwise.Records.Tests.Words;

public sealed class TaskTermsTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en");
    private static readonly CultureInfo Spanish = CultureInfo.GetCultureInfo("es");

    [Fact]
    public void Of_EveryNameOfADesign_HasWordsInBothLanguagesAndNoWordsAreLeftOver()
    {
        List<string> known = [.. Names<MovementPattern>(), .. Names<SupportPart>(), .. Names<FactorKind>(), .. Names<FactorRole>(), .. Names<FactorUnit>(),
            .. Names<MatShare>(), .. Names<StepLetter>(), .. Names<FunctionNeed>(), .. Names<DoseKind>()];
        foreach (var language in new[] { CultureInfo.InvariantCulture, Spanish })
        {
            var keys = new ResourceManager(typeof(TaskTerms)).GetResourceSet(language, createIfNotExists: true, tryParents: false)!.Cast<DictionaryEntry>().Select(e => (string)e.Key);
            Assert.Equal(known.Order(StringComparer.Ordinal), keys.Order(StringComparer.Ordinal));
        }
        Assert.Equal("Throwing", TaskTerms.Of(MovementPattern.Throw, English));
        Assert.Equal("Lanzar", TaskTerms.Of(MovementPattern.Throw, Spanish));
    }

    [Fact]
    public void Of_FactorsAndTheirValues_TakesTheTasksWordsAndTheProgramsForDoses()
    {
        var design = TaskLibrary.Designs.Single(d => d.Words["en"].Name == "Target throw");
        var (distance, width) = (design.Factors[0], design.Factors[1]);
        Assert.Equal("Distance, in metres", TaskTerms.Of(distance, design.Words["en"], English));
        Assert.Equal("Ancho de la diana", TaskTerms.Of(width, design.Words["es"], Spanish));
        Assert.Equal("0,25", TaskTerms.Of(width, FactorValue.Of(0.25m), design.Words["es"], Spanish));
        var balance = TaskLibrary.Designs.Single(d => d.Words["en"].Name == "V-sit");
        Assert.Equal("straight", TaskTerms.Of(balance.Factors[0], FactorValue.Of("straight"), balance.Words["en"], English));
        Assert.Equal("unknown", TaskTerms.Of(balance.Factors[0], FactorValue.Of("unknown"), balance.Words["en"], English));
    }

    private static IEnumerable<string> Names<T>() where T : struct, Enum => Enum.GetValues<T>().Select(named =>
    {
        Assert.NotEqual("", TaskTerms.Of(named, English));
        return typeof(T).Name + named;
    });
}
