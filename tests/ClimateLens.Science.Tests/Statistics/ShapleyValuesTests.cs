using ClimateLens.Science.Statistics;
using CsCheck;

namespace ClimateLens.Science.Tests.Statistics;

public class ShapleyValuesTests
{
    private static readonly Gen<double[]> Games =
        Gen.Int[1, ShapleyValues.MostPlayers].SelectMany(players => Gen.Double[-100, 200].Array[1 << players]);

    [Fact]
    public void Shares_AnyGame_AddUpToTheTotal() => Games.Sample(values =>
        Assert.Equal(values[^1] - values[0], ShapleyValues.Of(values).Sum(), 1e-9));

    /// <summary>The definition itself: the mean, over all orders, of what a player adds on arrival.</summary>
    [Fact]
    public void Shares_OfFivePlayers_AreTheMeanOverAllOrders() => Gen.Double[-10, 10].Array[32].Sample(values =>
    {
        double[] sums = new double[5];
        int orders = Arrive(values, 0, new double[5], sums);
        Assert.Equal(120, orders);
        double[] shares = ShapleyValues.Of(values);
        for (int i = 0; i < 5; i++)
        {
            Assert.Equal(sums[i] / orders, shares[i], 1e-9);
        }
    });

    [Fact]
    public void Shares_PlayerWhoAddsNothing_GetsNothing() => Gen.Double[-10, 10].Array[8].Sample(values =>
    {
        double[] withIdle = [.. values, .. values]; // bit 3 changes nothing
        double[] shares = ShapleyValues.Of(withIdle), without = ShapleyValues.Of(values);
        Assert.Equal(0, shares[3], 1e-12);
        for (int i = 0; i < 3; i++)
        {
            Assert.Equal(without[i], shares[i], 1e-9);
        }
    });

    [Fact]
    public void Shares_IntoASpan_AllocateNothing()
    {
        double[] values = new double[256], shares = new double[8];
        values[255] = 8;
        ShapleyValues.Of(values, shares);
        long before = GC.GetAllocatedBytesForCurrentThread();
        ShapleyValues.Of(values, shares);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Assert.All(shares, share => Assert.Equal(1, share, 1e-12)); // all are needed, so all get the same
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(512)]
    public void Shares_WrongNumberOfValues_Throw(int count) =>
        Assert.Throws<ArgumentException>(() => ShapleyValues.Of(new double[count]));

    private static int Arrive(double[] values, int present, double[] added, double[] sums)
    {
        int orders = 0;
        for (int next = 0; next < added.Length; next++)
        {
            int after = present | (1 << next);
            if (after != present)
            {
                added[next] = values[after] - values[present];
                orders += Arrive(values, after, added, sums);
            }
        }

        if (present == values.Length - 1)
        {
            for (int i = 0; i < sums.Length; i++)
            {
                sums[i] += added[i];
            }

            return 1;
        }

        return orders;
    }
}
