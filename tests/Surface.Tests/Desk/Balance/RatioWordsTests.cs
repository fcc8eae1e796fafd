using System.Globalization;
using Slantwise.Desk.Pages.Balance;

namespace Slantwise.Surface.Tests.Desk.Balance;

public sealed class RatioWordsTests
{
    [Theory]
    [InlineData(.5, "half", "la mitad de")]
    [InlineData(.34, "a third", "un tercio de")]
    [InlineData(.1, "0.10 times", "0,10 veces")]
    [InlineData(1.5, "1.50 times", "1,50 veces")]
    [InlineData(3, "3.0 times", "3,0 veces")]
    public void Of_ARatio_IsANamedFractionWhereThereIsOne(double ratioFraction, string english, string spanish)
    {
        Assert.Equal(english, RatioWords.Of(ratioFraction, CultureInfo.GetCultureInfo("en")));
        Assert.Equal(spanish, RatioWords.Of(ratioFraction, CultureInfo.GetCultureInfo("es")));
    }
}
