using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Slantwise.Engines.Tests.Rules;

public sealed partial class UnitsTests
{
    [Fact]
    public void PublicDoubles_InEnginesRecordsPaper_CarryTheirUnit() => Sources.None(
        from file in Sources.Code("src/Engines", "src/Records", "src/Paper")
        from name in DoublesOf(Sources.Syntax(file.Text))
        where !HasUnit(name)
        select $"{file.Path}: {name}",
        "A public double says its unit (HeldS, WidthMm, ShareFraction, ...):");

    [Theory]
    [InlineData("HeldS", true)]
    [InlineData("widthMm", true)]
    [InlineData("MissedFraction", true)]
    [InlineData("Width", false)]
    [InlineData("Sum", false)]
    [InlineData("MM", false)]
    public void HasUnit_OfAName_SeesASuffixAfterALowerLetter(string name, bool expected) => Assert.Equal(expected, HasUnit(name));

    private static bool HasUnit(string name) => Unit().IsMatch(name);

    private static IEnumerable<string> DoublesOf(SyntaxNode root)
    {
        foreach (var node in root.DescendantNodes().Where(IsPublic))
        {
            switch (node)
            {
                case PropertyDeclarationSyntax p when IsDouble(p.Type): yield return p.Identifier.Text; break;
                case FieldDeclarationSyntax f when IsDouble(f.Declaration.Type):
                    foreach (var v in f.Declaration.Variables) yield return v.Identifier.Text;
                    break;
                // A formula is named Of after its type, which then carries the unit's meaning in its documentation.
                case MethodDeclarationSyntax m when IsDouble(m.ReturnType) && m.Identifier.Text is not "Of": yield return m.Identifier.Text; break;
            }
            var parameters = node switch
            {
                RecordDeclarationSyntax r => r.ParameterList,
                ClassDeclarationSyntax c => c.ParameterList,
                StructDeclarationSyntax s => s.ParameterList,
                BaseMethodDeclarationSyntax m => m.ParameterList,
                _ => null,
            };
            foreach (var parameter in parameters?.Parameters ?? [])
                if (IsDouble(parameter.Type)) yield return parameter.Identifier.Text;
        }
    }

    private static bool IsPublic(SyntaxNode node) => node is MemberDeclarationSyntax member
        && member.Modifiers.Any(m => m.Text == "public")
        && member.Ancestors().OfType<TypeDeclarationSyntax>().All(t => t.Modifiers.Any(m => m.Text == "public"))
        && member is not ConversionOperatorDeclarationSyntax and not OperatorDeclarationSyntax;

    private static bool IsDouble(TypeSyntax? type) => type?.ToString() is "double" or "double?" or "float" or "float?";

    [GeneratedRegex("[a-z0-9XYZ](Kg|H|H2|M|M2|Mm|Mm2|Cm|S|S2|Ms|Min|Rad|Deg|Px|Px2|Pt|Fraction|Logits|Count|PerS|PerM|Sd|Sd2|Nats)$")]
    private static partial Regex Unit();
}
