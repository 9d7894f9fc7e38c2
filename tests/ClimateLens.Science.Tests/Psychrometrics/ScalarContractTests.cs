using System.Globalization;

namespace ClimateLens.Science.Tests.Psychrometrics;

/// <summary>What every scalar function promises: NaN in gives NaN out, the impossible throws with value and allowed range.</summary>
public class ScalarContractTests
{
    public static TheoryData<string> Names => [.. ScalarCatalogue.All.Select(f => f.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Scalar_GoodInputs_GiveANumber(string name)
    {
        ScalarFunction function = Named(name);
        Assert.True(double.IsFinite(function.Run(function.Good)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Scalar_NaNInAnyPlace_GivesNaN(string name)
    {
        ScalarFunction function = Named(name);
        for (int place = 0; place < function.Good.Length; place++)
        {
            Assert.True(double.IsNaN(function.Run(With(function.Good, place, double.NaN))), $"place {place}");
        }

        Assert.True(double.IsNaN(function.Run([.. function.Good.Select(_ => double.NaN)])));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Scalar_ImpossibleInput_ThrowsWithValueAndRange(string name)
    {
        ScalarFunction function = Named(name);
        Assert.Equal(function.Good.Length, function.Impossible.Length);
        for (int place = 0; place < function.Good.Length; place++)
        {
            foreach (double value in function.Impossible[place])
            {
                var thrown = Assert.Throws<ArgumentOutOfRangeException>(
                    () => function.Run(With(function.Good, place, value)));
                Assert.Contains("allowed: ", thrown.Message, StringComparison.Ordinal);
                string actual = ((double)thrown.ActualValue!).ToString(CultureInfo.InvariantCulture);
                Assert.Contains($"The value {actual} is impossible", thrown.Message, StringComparison.Ordinal);
                Assert.DoesNotContain(".", thrown.ParamName!, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Catalogue_HoldsEveryPublicScalarFunction()
    {
        string[] functions = [.. typeof(ClimateLens.Science.Psychrometrics.Limits).Assembly.GetExportedTypes()
            .Where(type => type.IsAbstract && type.IsSealed && type.Namespace is not null
                && (type.Namespace.EndsWith("Psychrometrics", StringComparison.Ordinal) || type.Namespace.EndsWith("Sun", StringComparison.Ordinal)))
            .SelectMany(type => type.GetMethods(System.Reflection.BindingFlags.Public | System.Reflection.BindingFlags.Static)
                .Where(method => !method.IsSpecialName && method.DeclaringType == type)
                .Select(method => $"{type.Name}.{method.Name}"))
            .Distinct()];
        // Whole columns have their own contract; a day's sun times and a coefficient by name take no measured number.
        string[] others = ["SunTimes.Of", "Psychrometer.CoefficientPerK"];
        Assert.Empty(functions
            .Where(f => !f.StartsWith("MoistAirColumns", StringComparison.Ordinal))
            .Except(ScalarCatalogue.All.Select(f => f.Name)).Except(others));
    }

    private static ScalarFunction Named(string name) => ScalarCatalogue.All.Single(f => f.Name == name);

    private static double[] With(double[] inputs, int place, double value) =>
        [.. inputs.Select((x, i) => i == place ? value : x)];
}
