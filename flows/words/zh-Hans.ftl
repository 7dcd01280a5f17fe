# the page
page-title = 泡茶小笺
page-sheet = 来往的话
page-language = 语言
page-you-wrote = 您写道：
page-write-label = 下一行
page-write-hint = 茶、器皿、容量
page-write-on = 也可以自己写
page-write = 写下
page-write-full = 一行最多写到这里，粘贴的内容可能没有全部放进来。
page-choices = 请选
page-opening = 正在铺开小笺……
page-lost = 暂时连不上。您写的会先留着，连上后自动送出。
page-waiting = 等候送出
page-refused = 未能送出，请再写一次
page-left = 还有
page-pour-now = 出汤
page-ready-at = 叫您的时间
page-since = 已过
page-sound = 该出汤时响一声、震一下
page-sound-wake = 请先轻触一下小笺，声音才能响。
page-print = 印成茶卡
page-fresh = 为下一位换一张新笺
page-fresh-confirm = 从这台设备清除这张
page-telegram = 到 Telegram 继续
page-my-data = 存有我的什么
page-elsewhere = 在另一台设备上看这张小笺
page-elsewhere-show = 显示一组号码给另一台设备
page-elsewhere-how = 在另一台设备打开本页，把号码填在页脚。五分钟内有效，只能用一次。
page-elsewhere-type = 另一台设备上的号码
page-elsewhere-join = 在这里打开那张小笺
page-elsewhere-wrong = 这组号码打不开小笺，可能用过了或过期了，请在那边再取一组。
page-elsewhere-slow = 试的次数太多了，请等一分钟。
page-from-label = 茶标上的冲泡法
page-no-script = 要在这里书写，请允许本页运行脚本。
page-no-cookie = 本页要用一个 cookie 认得您的小笺，请允许后重新打开本页。
page-not-found = 这里没有这一张，茶标或链接可能是旧的。
page-failed = 我们这边出了点问题，请稍后再试。
page-too-fast = 有点太快了，请等几秒再试。
page-back = 回到小笺
page-earlier = 更早的话这里不再显示；留存的全部内容在页脚的“存有我的什么”里。
page-file-gone = 这个文件已不在这里了，请在小笺上再要一次。

# 冲泡要求里的错误
mistake-tea-missing = 请说明是哪一款茶，或至少是哪一类茶。
mistake-tea-unknown = 没有找到这款茶。请说它的茶类，或其中一款：{ $allowed }。
mistake-chart-unwritable = 图写不进 { $file }。请写一个已有文件夹里的文件名。
mistake-tea-ambiguous = 符合的茶不止一款：{ $allowed }。请说明是哪一款。
mistake-family-unknown = 茶类须为以下之一：{ $allowed }。
mistake-family-differs = { $tea } 属于 { $family }；请不填茶类，或填这一类。
mistake-vessel-missing = 请说明用哪一种茶器：{ $allowed }。
mistake-vessel-unknown = 茶器须为以下之一：{ $allowed }。
mistake-volume-missing = 请说明茶器装满时有多少毫升。
mistake-volume-out-of-range = 茶器容量须在 { $least } 到 { $most } 毫升之间。
mistake-leaf-out-of-range = 这件茶器的茶叶须在 { $least } 到 { $most } 克之间，叶子才有舒展的空间。
mistake-water-out-of-range = 水温须在 { $least } 到 { $most } °C 之间。
mistake-elevation-out-of-range = 海拔须在 { $least } 到 { $most } 米之间。
mistake-guests-out-of-range = 客人须为 { $least } 到 { $most } 之间的整数。
mistake-strength-out-of-range = 浓淡须在 { $least }（淡）到 { $most }（浓）之间；1 是一般泡法。
mistake-style-unknown = 泡法须为以下之一：{ $allowed }。
mistake-style-needs-powder = 只有茶粉才用点茶的方式；叶茶请换一种泡法。
mistake-as-brewed-out-of-range = { $field } 须在 { $least } 到 { $most } 之间。
mistake-field-unknown = 这里没有 { $field } 这一项；可用的是 { $allowed }。
mistake-field-missing = 缺少 { $field }。
mistake-text-expected = { $field } 须为文字。
mistake-unit-missing = { $said } 什么呢？请连单位一起写，例如 95 °C、120 毫升或 5 克。
mistake-size-unknown = 装满水，倒进量杯看看，或放上秤：1 克就是 1 毫升。也可以选最接近的。
mistake-number-expected = { $field } 须为数字。
mistake-flag-expected = { $field } 须为 true 或 false。
mistake-list-expected = { $field } 须为列表。
mistake-json-expected = 须为一个 JSON 对象。
mistake-flag-unknown = 这不是以下之一：{ $allowed }，或缺少它的值。
mistake-language-unknown = 语言须为以下之一：{ $allowed }。

# the way in
hello = 您好。我帮您算怎么泡茶：放多少茶叶、水多热、泡多久。请告诉我是什么茶、用什么器具，例如“铁观音，110 毫升盖碗”。
hello-back = 您好。是什么茶，用什么泡？写下来，或在下面选。
hello-short = 告诉我是什么茶、用什么泡，或在下面选。
# 说在按钮文字前后、本身没有意思的话：“好，带我泡”。
said-around-labels = 好
    .typed = 好 / 好的 / 好吧 / 对 / 好啊 / 好嘞 / 嗯 / 哦 / 那 / 那就 / 请 / 麻烦 / 麻烦你 / 是 / 行 / 可以 / 谢谢 / 吧
# Said at any step and of anything: “done”. Where something else was asked, it answers that, and not the brew that goes on meanwhile.
said-at-any-step = 好了
    .typed = 好了 / 都好了 / 下一步 / 下一个 / 太久了 / 迟了 / 更多 / 其他 / 等等 / 等一下 / 暂停 / 跳过 / 继续 / 回来了 / 结束 / 停 / 够了 / 到此为止 / 再来 / 为什么 / 放好了 / 做好了
# 说要列出的哪一个：“那就第一个”。
said-around-the-chosen = 那就
    .typed = 那就 / 那 / 就 / 我要 / 我们要 / 我选 / 我想要 / 我想报 / 我想上 / 我报 / 我们报 / 帮我报 / 帮我选 / 要 / 选 / 报 / 来 / 还是 / 好了 / 就好 / 就好了 / 好啦 / 吧 / 可以吗 / 好吗 / 谢谢 / 那个 / 的课
# 说的是列出的哪一个：最后一个、第一个、第二个。
said-for-last = 最后一个
    .typed = 最后一个 / 最后一节 / 最后那节 / 最后那个 / 最后一堂
said-for-1 = 第一个
    .typed = 第一个 / 第一堂 / 第一节 / 第一门 / 第一种 / 第一项 / 第一 / 第1个 / 第1堂 / 第1节 / 第1门 / 第1种 / 第1项 / 第1 / 选第一个 / 要第一个 / 我要第一个 / 我选第一个 / 我要第一节
said-for-2 = 第二个
    .typed = 第二个 / 第二堂 / 第二节 / 第二门 / 第二种 / 第二项 / 第二 / 第2个 / 第2堂 / 第2节 / 第2门 / 第2种 / 第2项 / 第2 / 选第二个 / 要第二个 / 我要第二个 / 我选第二个 / 我要第二节
said-for-3 = 第三个
    .typed = 第三个 / 第三堂 / 第三节 / 第三门 / 第三种 / 第三项 / 第三 / 第3个 / 第3堂 / 第3节 / 第3门 / 第3种 / 第3项 / 第3 / 选第三个 / 要第三个 / 我要第三个 / 我选第三个 / 我要第三节
said-for-4 = 第四个
    .typed = 第四个 / 第四堂 / 第四节 / 第四门 / 第四种 / 第四项 / 第四 / 第4个 / 第4堂 / 第4节 / 第4门 / 第4种 / 第4项 / 第4 / 选第四个 / 要第四个 / 我要第四个 / 我选第四个 / 我要第四节
said-for-5 = 第五个
    .typed = 第五个 / 第五堂 / 第五节 / 第五门 / 第五种 / 第五项 / 第五 / 第5个 / 第5堂 / 第5节 / 第5门 / 第5种 / 第5项 / 第5 / 选第五个 / 要第五个 / 我要第五个 / 我选第五个 / 我要第五节
very-well = 好的。
hello-again = 我在，刚才说到这里：
choice-brew = 泡一泡茶
    .typed = 泡茶 / 冲茶 / 开始
choice-language = English / 中文
    .typed = language / 語言 / 语言
choice-shop = 找店家
    .typed = 问店家 / 真人 / 店主 / 找人
choice-english = English
choice-traditional = 繁體中文
choice-simplified = 简体中文
ask-language = 用哪种语言好呢？
language-changed = 好，我们用简体中文。
nothing-to-read = 这条消息里我看不到文字。
not-understood = 这句我没看懂。
reads-two-languages = 我只看得懂中文和英文。其他的字，我只认得茶名、茶器和带单位的数字。
off-topic = 这个不在我的茶桌上；我只懂泡茶、茶具保养和店里的事。
about-me = 我是这家店的泡茶帮手，是程序，不是真人。告诉我什么茶、用什么泡，我就照您的壶杯算出茶叶、水温和时间，再一泡一泡陪您泡。您的口味我会记住，课程也可以问我；我答不了的，会转给店家。
you-are-welcome = 不客气，请慢用。
until-next-time = 下次见，慢慢喝。
glad-it-tastes = 真好。告诉我是什么茶、用什么泡的，我把泡法记下来。
as-you-like = 好的。
tap-too-old = 那个选项属于已经结束的话题。请直接写给我，或在下面选。
tap-already-so = 现在就是这样了。
nothing-before = 前面没有了。
flow-changed = 这期间我的说明更新了；您说过的都还在。
one-at-a-time = 先说定这个，另一件事请稍后再问我一次：“{ $rest }”
ask-forget = 要我忘记关于您的一切吗？包括器具、口味、对话和提问，忘了就找不回来。
choice-forget = 全部忘记
    .typed = 是 / 忘记 / 好
choice-keep = 保留
    .typed = 不 / 不要
forgotten = 这里关于您的一切都删掉了，包括您问店家的问题。已经发进聊天里的消息会留在那边。
kept = 都留着。

# the main job
ask-tea = 是什么茶？请写茶名，或选茶类。
ask-tea-again = 请写茶名，或选茶类：
brew-of-family = 这一类我会算的有这些；架上今天有哪些，要问店家。您要哪一种？
ask-which-of-these = 不止一种茶符合，您说的是哪一种？
ask-which-to-plan = 要我把哪一种从头到尾算好？
ask-family-of-unknown = 我不认得“{ $unknownTea }”。它属于哪一类？知道茶类我就能算。
ask-family = 它属于哪一类茶？
ask-vessel = 用什么来泡？
ask-vessel-of-these = 这几样都可以；小的可以多泡几次，滋味也更鲜明。用哪一个？
ask-vessel-nearest = 这种器具我不认得。请选最接近的：看大小，看有没有盖子或滤网。
ask-other-vessel = 是这里面的一种吗？直接描述也可以。
ask-size = 装满是多少毫升？
ask-change = 想改哪一项？
ask-leaf = 您要放几克茶叶？
ask-water = 您的水有多热？
choice-family = { FAMILY($item) }
choice-tea = { TEA($item) }
choice-vessel = { VESSEL($item) }
choice-size = { ML($item) }
choice-other-tea = 另一种茶
choice-other-vessel = 别的器具
choice-first-vessels = 回到前面的器具
choice-why = 为什么这样
    .typed = 为什么 / 为什么是这些数字
choice-change = 改一改
    .typed = 改 / 更改
choice-another-tea = 换一种茶
choice-plan-again = 看泡法
    .typed = 泡法
choice-leaf-so-much = { GRAMS($soMany) }茶叶
    .typed = 克 / 茶叶 / 克茶叶
choice-so-many-infusions = { NUMBER($soMany) } 泡
    .typed = 泡 / 次 / 道
choice-back-to-plan = 就照这样
choice-change-tea = 茶
choice-change-vessel = 器具
choice-change-size = 容量
choice-change-leaf = 茶叶份量
choice-change-water = 水温
choice-lighter = 淡一点
choice-stronger = 浓一点
choice-you-say = 由您建议
brew-by-its-look = 照您说的样子，多半是：
brew-so-far = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}{ $vessel ->
    [none] { "" }
   *[other] { " " }· { VESSEL($vessel) }
}{ $volumeMl ->
    [none] { "" }
   *[other] { " " }· { ML($volumeMl) }
}
brew-so-far-vessel = { $vessel ->
    [none] { ML($volumeMl) }
   *[other] { VESSEL($vessel) }{ $volumeMl ->
        [none] { "" }
       *[other] { " " }· { ML($volumeMl) }
    }
}
brew-comes-lighter = 好，泡淡一些。
brew-comes-stronger = 好，泡浓一些。
brew-title = { TEA($tea) } · { VESSEL($vessel) } · { ML($volumeMl) }
brew-title-family = { FAMILY($family) } · { VESSEL($vessel) } · { ML($volumeMl) }，按这类茶的一般情形
brew-as-kept = （照您这款茶平常的泡法。要改什么，直接说。）
brew-kept = 记下来了，当作您泡{ TEA($tea) }的平常泡法：下次只写茶名就好。在“我的茶”里可以看，也可以取消。
brew-kept-family = 记下来了，当作您泡{ FAMILY($family) }的平常泡法：下次只写茶名就好。在“我的茶”里可以看，也可以取消。
nothing-to-keep = 还没有可以记的泡法：请先告诉我什么茶、用什么泡。
brew-title-bowl = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
} · 茶碗点茶
brew-as-last-time = （用的是您上次的器具；换了请告诉我。）
brew-as-in-the-shop = （这是店里的泡法。请在下面告诉我您用什么器具。）
brew-leaf = 茶叶：{ GRAMS($plan-leafG) }，约 { SPOONS($plan-spoons) } 平茶匙；干茶{ $plan-fill }。
brew-bags = 茶包 { $plan-bags } 个：细碎茶叶共约 { GRAMS($plan-leafG) }，出味快。
brew-spoonful = 这款茶一平茶匙约 { GRAMS($spoonG) }{ $spoons ->
    [1] 。
   *[other] ；{ SPOONS($spoons) } 平茶匙大约是 { GRAMS($leafG) }。
}
brew-leaf-enough = 够的，这份泡法就是按 { GRAMS($plan-leafG) }算的。
brew-no-scale = 没有秤：抓一把、捏一撮，各人差很多；茶匙舀满，用刀背刮平，就够准了。
brew-leaf-powder = 茶粉：{ GRAMS($plan-leafG) }，约 { SPOONS($plan-spoons) } 平茶匙，过筛，加水 { ML($plan-waterMl) }，打到起沫。
brew-leaf-little = 这个器具放这些茶叶偏少（一般放 { GRAMS($usualG) }），茶汤只有平常浓度的 { PERCENT($strength) } 左右。
brew-leaf-little-fits = 要平常的浓度，用约 { ML($fitsMl) }的器具泡，或多放些茶叶。
brew-leaf-little-longer = 也可以少泡几次、每次泡久些：{ DURATIONS($times) }，浓度约是这样的 { NUMBER($strength, maximumFractionDigits: 1) } 倍。
brew-leaf-much = 这个器具放这些茶叶偏多（一般放 { GRAMS($usualG) }），就算时间缩到最短，浓度也约是平常的 { NUMBER($strength, maximumFractionDigits: 1) } 倍。
brew-leaf-much-fits = 要平常的浓度，用约 { ML($fitsMl) }的器具泡，或少放些茶叶。
choice-longer-fewer = 泡久些、少泡几次
    .typed = 简单一点 / 有没有简单一点的泡法 / 太麻烦了 / 懒人泡法 / 泡久一点少泡几次 / 少泡几次 / 少泡几次泡久些
brew-fill-bottom = 刚好铺满底
brew-fill-tenth = 约占十分之一
brew-fill-fifth = 约占五分之一
brew-fill-quarter = 约占四分之一
brew-fill-third = 约占三分之一
brew-fill-half = 约占一半
brew-fill-more = 超过一半
brew-water = 水：{ DEGREES($waterC, $unit) }；总共烧 { ML($kettleMl) }。
brew-water-usual = 一般用 { DEGREES($waterC, $unit) } 左右的水；其余要看用什么来泡。
brew-dose-right = { $is ->
    [more] { GRAMS($leafG) }比一般的 { GRAMS($usualG) }多，也可以，时间我算短了
    [less] { GRAMS($leafG) }比一般的 { GRAMS($usualG) }少，也可以，时间我算长了
   *[same] { GRAMS($leafG) }正好
}。
brew-heat-right = { DEGREES($toldC, $unit) } 正好{ $isSame ->
    [yes] {""}
   *[no] ，一般用 { DEGREES($waterC, $unit) } 左右
}。
brew-heat-doubted = { DEGREES($toldC, $unit) } 比一般的 { DEGREES($waterC, $unit) } { $is ->
    [cooler] 凉，出味慢一些
   *[hotter] 热，出味快，也容易苦
}。要用这个温度，说“{ DEGREES($toldC, $unit) }”。
brew-heat-hotter = { DEGREES($toldC, $unit) } 比一般的 { DEGREES($waterC, $unit) } 热，不要紧，只是出味快一些，我照这个算。
brew-heat-hot = { DEGREES($toldC, $unit) } 对这茶偏热：一般用 { DEGREES($waterC, $unit) } 左右，再热容易苦。用这么热的水，时间要短。
brew-heat-cooler = { DEGREES($toldC, $unit) } 比一般的 { DEGREES($waterC, $unit) } 凉：出味慢一些，我照这个算。
brew-boils-here = 您那里的水大约 { DEGREES($boilsAtC, $unit) } 就开，以后我都照这个算。
brew-boils-enough = 您那里的水大约 { DEGREES($boilsAtC, $unit) } 就开，够热了：一般用 { DEGREES($waterC, $unit) } 左右。
brew-boils-short = 您那里的水大约 { DEGREES($boilsAtC, $unit) } 就开，一般要 { DEGREES($waterC, $unit) } 左右：水一开就冲，出味慢一些，我照这个算。
brew-ahead = { $nth ->
    [1] 例如{ VESSEL($vessel) } { ML($volumeMl) }
   *[other] 或者{ VESSEL($vessel) } { ML($volumeMl) }
}：茶叶 { GRAMS($leafG) }（约 { SPOONS($spoons) } 平茶匙），{ DEGREES($waterC, $unit) }，{ $count ->
    [1] { DURATION($firstS) }，泡一次
    [2] { DURATIONS($times) }
    [3] { DURATIONS($times) }
   *[other] { DURATIONS($times) }……共 { $count } 泡
}。
brew-lasts = { $nth ->
    [1] { $n ->
        [0] { GRAMS($stockG) }不够泡一次
       *[other] { GRAMS($stockG) }大约够泡 { $n } 次
    }
   *[other] { $n ->
        [0] 这样也不够
       *[other] 或者大约 { $n } 次
    }
}：{ VESSEL($vessel) } { ML($volumeMl) }，每次 { GRAMS($leafG) }。
brew-water-so-hot = { ML($waterMl) }的水要到 { DEGREES($waterC, $unit) }：
brew-leaf-without = 没有秤也行，份量我也会用茶匙告诉您。
brew-water-without = 没有温度计也行：水烧开后要放多久，或兑多少凉开水，我会照您的茶算好。
brew-water-stood = 壶里 { ML($kettleMl) }的水烧开后掀盖放 { DURATION($seconds) }，大约是 { DEGREES($waterC, $unit) }（± { SPREAD($uncertaintyC, $unit) }）；盖着盖会更热。
brew-water-stood-right = 泡这款茶差不多了。
brew-water-stood-hot = 要 { DEGREES($wantedC, $unit) }，往壶里加 { ML($coolMl) }凉开水，或再放 { DURATION($seconds) }。
brew-water-stood-cool = 这款茶要 { DEGREES($wantedC, $unit) }，再加热一下。不想加热，就写“用 { DEGREES($waterC, $unit) } 的水”，我照这个重新算。
brew-kettle-near = 选 { DEGREES($settingC, $unit) } 就好，跟要用的 { DEGREES($wantedC, $unit) } 差不多。
brew-kettle-hotter = 选 { DEGREES($settingC, $unit) }。要到 { DEGREES($wantedC, $unit) }，{ ML($waterMl) }的水加 { ML($coolMl) }凉开水，或掀盖放 { DURATION($seconds) }。
brew-kettle-cooler = 选最热的 { DEGREES($settingC, $unit) }；一般用 { DEGREES($wantedC, $unit) }。写“用 { DEGREES($settingC, $unit) } 的水”，我把时间算长一些。
brew-water-boiling = 水：刚烧开（您那里是 { DEGREES($waterC, $unit) }）；总共烧 { ML($kettleMl) }。
brew-water-cold = 水：冷水，{ DEGREES($waterC, $unit) }，{ ML($waterMl) }；全程放冰箱。
brew-warm = 先用热水温器具，再把水倒掉。
brew-rinse = 用同样的水洗茶 { DURATION($plan-rinseS) }，这道不喝。
brew-time-once = 时间：{ DURATION($plan-firstS) }，泡一次。
brew-follows = 会跟着变：您改了什么，我都重新算过。照现在的泡法：
brew-steeped-instead = 不煮，用冲泡的话：
brew-times = 时间：{ DURATIONS($plan-times) }，共 { $plan-count } 泡。
brew-so-many-cups = 要 { NUMBER($n) } 杯就每杯照放：茶叶 { GRAMS($plan-leafG) }、水 { ML($plan-waterMl) }，一共 { GRAMS($leafG) }茶叶。时间不变。
brew-yield = 每泡约出汤 { ML($plan-pouredMl) }，全部约 { ML($plan-pouredInAllMl) }。
brew-leaf-stays = 茶叶留在杯里：喝到剩三分之一就续水。
brew-leaf-stays-hot = 茶叶留在瓶里，水一直热着：喝到剩三分之一就续水。要带着喝好几个小时，会浓到约 { NUMBER($share, maximumFractionDigits: 1) } 倍：那就只放 { GRAMS($lessG) }，或泡好滤掉茶叶再装瓶。
brew-leaf-stays-hours = 茶叶留在瓶里：放得少，带着喝好几个小时也可以。
choice-leave-leaf-in = 茶叶留在杯里
    .typed = 茶叶不捞 / 不捞 / 留在杯里 / 不用捞
brew-leaf-out = 马克杯没有滤网：时间到了把茶汤倒进另一个杯子。没有别的杯子，就让茶叶留在杯里，喝了再续。
brew-leaf-bag-out = 时间到就把茶包提起来滴干，不要挤。一个茶包就泡这一次。
brew-caffeine = 照现在这个泡法，一共约 { NUMBER($usualMg, maximumFractionDigits: 0) } 毫克咖啡因（{ NUMBER($leastMg, maximumFractionDigits: 0) } 到 { NUMBER($mostMg, maximumFractionDigits: 0) }，各种茶叶有差别）。
brew-no-shorter = 这些茶叶没办法再短了，可以少放茶叶，或用凉一点的水。
brew-why-asked = 放多少、水多热、泡多久，要看是什么茶、什么器具、多大，所以才问，只用来算这个。
brew-comes-with-it = 这个等一下会和份量、时间一起告诉您。
brew-size-taken = 我先当作 { ML($volumeMl) }；不是的话，写上单位告诉我，例如“120 毫升”。
ask-tea-unsure = 没关系，看茶叶就知道大概：一粒粒或深色长条多半是乌龙，细而黑的是红茶，绿的是绿茶，带银毫的芽是白茶，压成饼的多半是普洱，有花的是花茶或花草茶。选最像的，或说说它的样子。
brew-how-many = { $plan-count ->
    [1] 照这个份量和器具，泡一次。
   *[other] { $plan-count } 次，之后茶叶里就所剩不多了。
}
brew-refills = 大约可以续 { $refills } 次水，之后就没什么味道了。
brew-leaf-waits = 每次把茶汤全部倒出来，茶叶留在器具里，等下一次加水。
brew-leaf-off = 时间到了把茶叶拿出来，或把茶汤全部倒出来。
brew-basket-out = 时间到了把滤网提起来，滴干，放在碟子上；茶叶就在那里等下一次注水。
brew-not-bitter = 准时出汤，应该浓淡刚好。哪一杯觉得太浓或太淡，告诉我，我再改时间或水温。
brew-bitter-stays = 茶叶一直在里面，放越久越浓，最后会苦：趁时间喝，再加水，或把茶叶拿出来。茶叶少放一点，就能放久一点。
brew-bowls = { NUMBER($guests) } 位：每人刷一碗，一共 { GRAMS($leafG) }茶粉。
brew-near-enough = 差不多就好：水温差两度、茶叶或时间差一成，几乎喝不出来。
brew-as-before = 好，改回之前那样。
brew-changed-as-asked = 只改了您要改的，其他数字跟着变。
brew-as-first = 这就是最初的泡法，还没有改过。
ask-number-of-what = { NUMBER($soMany) } 是指什么？
brew-caffeine-times = 照这个泡法泡 { NUMBER($n) } 份，一共约 { NUMBER($usualMg, maximumFractionDigits: 0) } 毫克咖啡因（{ NUMBER($leastMg, maximumFractionDigits: 0) } 到 { NUMBER($mostMg, maximumFractionDigits: 0) }，各种茶叶有差别）。
brew-caffeine-over = 超过欧洲食品安全局认为健康成人一天没有顾虑的 400 毫克：少喝几份，或用同一份茶叶再泡。心脏敏感、怀孕或服药的人，请问医生。
brew-caffeine-near = 茶叶浓的话，可能超过欧洲食品安全局认为健康成人没有顾虑的一天 400 毫克（所有饮料都算在内）、一次 200 毫克：分开在一天里喝，或少喝几份。心脏敏感、怀孕或服药的人，请问医生。
brew-caffeine-within = 没有超过欧洲食品安全局认为健康成人没有顾虑的一天 400 毫克（所有饮料都算在内）；一次不要多过 200 毫克。心脏敏感、怀孕或服药的人，请问医生。
brew-few = { $n } 泡也行：照前 { $n } 泡的时间泡，之后就停。茶叶里还有，想喝再接着泡。
brew-once = 那就照第一泡的时间，{ DURATION($plan-firstS) }，泡一次就好。
brew-once-small = 小壶小碗是一泡一泡出的，只泡一次，大半还留在茶叶里。说“西式”，我用少一点的茶叶重新算。
brew-in-plain = 简单说：放大约 { SPOONS($plan-spoons) } 平茶匙茶叶，加水，等 { DURATION($plan-firstS) }，把茶汤倒出来。
brew-in-plain-stays = 简单说：放大约 { SPOONS($plan-spoons) } 平茶匙茶叶，加水，等 { DURATION($plan-firstS) }，就可以喝，茶叶留在里面。
brew-in-steps = 说“带我泡”，我一步一步陪您；哪个词不明白，随时可以问。
brew-mug-taken = 我先用一般的 300 毫升马克杯来算，大家家里多半都有；想用别的，告诉我。
brew-vessel-for = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}：{ $family ->
    [green] 高一点的玻璃杯看得到叶子，喝了再续；白瓷盖碗、玻璃壶也很好，保温杯会闷熟
    [yellow] 高一点的玻璃杯看得到叶子，喝了再续；白瓷盖碗、玻璃壶也很好，保温杯会闷熟
    [white] 白瓷盖碗或玻璃壶；老白茶用大壶泡也好
    [oolong] 白瓷盖碗，或 100 至 150 毫升的紫砂小壶，一泡一泡地喝
    [black] 白瓷盖碗或瓷壶；有滤网的杯子也可以
    [dark] 紫砂壶或盖碗；熟普用保温杯也行
    [scented] 白瓷盖碗、瓷壶或玻璃杯；不要用紫砂壶，会吸花香
    [matcha] 宽口的茶碗，配竹茶筅
   *[other] 玻璃壶，或有滤网的杯子
}。说用哪一种、装满多少毫升，我就帮您算。
brew-simplest = 这已经是最省事的泡法：放茶叶、注水、时间到就倒出来。差半分钟不要紧，只是浓一点或淡一点。
brew-simplest-stays = 这已经是最省事的泡法：茶叶一直留在里面，喝了再续，不用算秒。
brew-stews = 绿茶、黄茶在保温杯里会闷熟，变黄变涩：时间到最好倒出来，或改用玻璃杯。
brew-about-tea = { TEA($tea) }，我知道的是：{ FAMILY($family) }，{ brew-leaf-form }，水温一般 { DEGREES($waterC, $unit) } 左右。
brew-rinse-of-it = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}：用热水快速冲洗一次，约 { DURATION($seconds) }，倒掉不喝，醒茶也去尘。用马克杯或大壶泡可以不洗。
brew-rinse-of-none = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}不必洗，洗掉的正是最好的部分。
brew-caffeine-of-it = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}：{ GRAMS($leafG) }茶配 { ML($ml) }水，第一杯约 { NUMBER($mg, maximumFractionDigits: 0) } 毫克咖啡因（{ NUMBER($leastMg, maximumFractionDigits: 0) } 至 { NUMBER($mostMg, maximumFractionDigits: 0) }，看茶叶）。
brew-caffeine-of-none = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}不含咖啡因。
brew-left-open = 这一点我没有把握：要问人，请说“找店家”。泡法我来算。
brew-what-tea = { TEA($tea) }属于{ FAMILY($family) }。
brew-similar = 和{ TEA($tea) }同属{ FAMILY($family) }、最接近的是：{ LIST($told) }。说出一款，我就算泡法；店里现在有没有，要问店家。
brew-similar-one = { TEA($tea) }（{ $shape ->
    [same] 茶叶形状相同
   *[other] 茶叶形状不同
}，{ $water ->
    [same] 水温差不多
    [cooler] 水温较低{ $roast ->
        [true]，焙火较轻
       *[false] {""}
    }
   *[hotter] 水温较高{ $roast ->
        [true]，焙火较重
       *[false] {""}
    }
}）
brew-compared = 并排来看 · { VESSEL($vessel) } · { ML($volumeMl) }{ $isOwn ->
    [yes] {""}
   *[no] （举例）
}
brew-leaf-form = { $form ->
    [ball-rolled] 茶叶揉成球形
    [pellet] 茶叶揉成珠形
    [twisted-strip] 茶叶揉成条形
    [large-twisted] 条索粗大
    [long-open] 大片舒展的叶
    [needle] 茶叶像针
    [bud] 芽头
    [flat] 扁平的叶
    [curled] 卷曲的叶
    [broken] 碎叶
    [granule] 颗粒
    [compressed] 压成的茶
    [powder] 粉末
   *[flower] 花
}
brew-compared-one = { TEA($tea) }（{ FAMILY($family) }，{ brew-leaf-form }）：{ GRAMS($leafG) }，{ DEGREES($waterC, $unit) }，第一泡 { DURATION($firstS) }，{ $count ->
    [1] 泡一次
   *[other] 共 { $count } 泡
}。
brew-each = { TEA($tea) }：茶叶 { GRAMS($leafG) }（约 { SPOONS($spoons) } 平茶匙），{ DEGREES($waterC, $unit) }，{ $count ->
    [1] { DURATION($firstS) }，泡一次
    [2] { DURATIONS($times) }
    [3] { DURATIONS($times) }
   *[other] { DURATIONS($times) }……共 { $count } 泡
}。
brew-compared-alike = 所以泡法一样，不同的是味道。
brew-same-family = 大致一样：{ FAMILY($family) }我按叶形算，不看年份。老茶或紧压的叶子，一般可以用到滚水；喝过第一杯再告诉我。
brew-compared-taste = 各是什么味道、产在哪里，店家最清楚：请说“找店家”。说出一款，我就算泡法。
brew-similar-unsure = 哪一款比较清淡或浓厚，我这里说不准，可以问店家。
brew-similar-none = 我不知道和{ TEA($tea) }同一类的其他茶，可以问问店家。
brew-not-followed = 这句我不太确定是什么意思。
# Asked beside a plan. What the rinse is for, what there is when all has been poured, and too long: common practice, no source
brew-strength-usual = 跟一般泡的一样浓：第一杯每毫升约 { NUMBER($first, maximumFractionDigits: 1) } 毫克泡出来的成分{ $count ->
    [1] 。
   *[other] ，最后一杯约 { NUMBER($last, maximumFractionDigits: 1) }。
 }说“浓一点”或“淡一点”，我重新算。
brew-strength-more = 照您的意思比一般浓：第一杯每毫升约 { NUMBER($first, maximumFractionDigits: 1) } 毫克泡出来的成分{ $count ->
    [1] 。
   *[other] ，最后一杯约 { NUMBER($last, maximumFractionDigits: 1) }。
 }
brew-strength-less = 照您的意思比一般淡：第一杯每毫升约 { NUMBER($first, maximumFractionDigits: 1) } 毫克泡出来的成分{ $count ->
    [1] 。
   *[other] ，最后一杯约 { NUMBER($last, maximumFractionDigits: 1) }。
 }
brew-rinse-why = 用热水冲一次，{ DURATION($plan-rinseS) }就倒掉：洗去茶尘，紧结或压紧的茶叶也开始舒展。不想洗，说“不洗茶”就好。
brew-rinse-once = 只洗一次：热水冲 { DURATION($plan-rinseS) }就倒掉，这道不喝；之后的第一泡就可以喝。
brew-cake = { $family ->
    [dark] 先撬下这一泡的份量，撬松再放进去。想知道怎么撬，问我就行。
    [white] 先撬下这一泡的份量，撬松再放进去。想知道怎么撬，问我就行。
   *[other] 饼茶多半是普洱或白茶。是的话请写茶名，我换那一款算。
  }
brew-rinse-may-skip = 可以不洗：第一杯会带一点茶尘，紧结的茶叶也晚一点才舒展。说“不洗茶”，我就照不洗的重新算。
brew-rinse-not-needed = 这样泡不用洗茶，第一泡就可以喝。想洗的话，热水冲几秒就倒掉。
brew-rinse-forgotten = 没关系：没洗也能喝，只是可能带一点茶尘，叶子舒展得慢一点。
brew-rinse-water = 倒掉就好，淋在杯子上还能温杯。里面有茶尘。
brew-no-rinse = 照您的意思，不洗茶。
brew-half-full = 只泡一半的话：茶叶 { GRAMS($leafG) }、水 { ML($waterMl) }，时间差不多。
brew-warm-why = 用热水烫一下，倒掉再放茶叶：茶具是冷的，第一泡就会降好几度。
brew-warm-not-needed = 这样泡不必先温；想温的话，用热水烫一下再倒掉也可以。
brew-fill-up = 每次约 { ML($plan-waterMl) }水，加上茶叶，离杯口还差一点点。
brew-fill-part = 每次约 { ML($plan-waterMl) }水，不用加满：茶叶少，水也少放。
brew-any-vessel = 耐沸水、倒得出茶汤的，或能连茶叶一起喝的，都可以；数字跟着器具算。
brew-size-to-the-brim = 不放茶叶、装到满是多少。茶叶和碗口该留的空间我会算进去。
brew-size-any-unit = 毫升、盎司、几杯都可以。
brew-for-whole = 是全部的量：{ GRAMS($plan-leafG) } 茶叶一次放进去，{ $plan-count } 泡都用它，几个人喝都一样。每泡约出汤 { ML($plan-pouredMl) }，大家分。
brew-ounces = 茶叶 { NUMBER($leafOz, maximumFractionDigits: 2) } 盎司，每泡水 { NUMBER($waterOz, maximumFractionDigits: 1) } 液量盎司（美制）：1 盎司是 28.35 克，1 液量盎司是 29.57 毫升。
# Common practice, no source
brew-in-bowl = 碗没有盖子，我照马克杯来算。
brew-in-saucepan = 小汤锅可以当壶用：水在锅里烧好，离火，再下茶叶、盖上盖，用滤网倒出来。倒多少水，就当它是多大。
brew-in-iron-pot = 铁壶很吃热，我算进去了：先烫透再泡；内壁上釉的不能放在炉上。
brew-in-jar = 玻璃罐多半不耐开水，可能裂开：有缺口、划痕的别用；先用热的自来水温一温，放在木头或布上，慢慢倒，等不烫手再拿。用马克杯更安全。
brew-no-coffee-maker = 茶叶不要放进咖啡机或摩卡壶：茶叶会胀，可能堵住泄压的地方。最多拿它烧水，茶就泡在耐沸水的器具里：马克杯、壶或公道杯都行。
brew-leaf-dry = 干茶，袋里拿出来什么样就称什么样，还没下水。湿叶要重好几倍。
brew-in-all = { $plan-count } 泡的浸泡时间一共 { DURATION($plan-allS) }，第一杯只要 { DURATION($plan-firstS) }。烧水、倒茶和喝茶的时间另算，喝到哪一杯都可以停。
brew-ending = { $plan-count } 泡以后茶叶里就所剩不多了。还喜欢就继续泡，每次泡久很多；喝起来像白开水，就结束了。
brew-ending-once = 一次就好：冷泡第二次会很淡。
brew-too-long = 只是越来越浓、越来越苦：一发现就倒出来，加热水调到顺口。下一泡照原来的时间就好。
brew-too-long-stays = 会变浓：加热水就好。
brew-too-long-cold = 在冰箱里多放几个小时只是比较浓，加冷水调淡就好。把茶叶拿出来，一天内喝完。
brew-about-more = 产地和味道，店家比我清楚：请说“找店家”。
brew-drawn-stronger = 泡 { DURATION($seconds) }而不是 { DURATION($plannedS) }，第一杯的浓度大约是原来的 { NUMBER($share, maximumFractionDigits: 1) } 倍。
brew-drawn-weaker = 泡 { DURATION($seconds) }而不是 { DURATION($plannedS) }，第一杯的浓度大约只有原来的 { PERCENT($share) }。
brew-drawn-as-planned = 正好，就是按这个时间算的。
brew-drawn-alike = 泡 { DURATION($seconds) }而不是 { DURATION($plannedS) }，第一杯几乎喝不出差别。
brew-age = 年份我不算在里面：先照上面泡，喝了再告诉我味道。
brew-infusion-later = 现在先不改：泡到第 { NUMBER($n) } 泡时，说“短一点”或“久一点”就好。
brew-weighed-hotter = 先照算好的 { DEGREES($plannedC, $unit) } 就好。用 { DEGREES($waterC, $unit) } 的话出味更快、更香，也更容易苦涩，时间要改成 { DURATIONS($times) }。想这样就说“热一点”。
brew-weighed-cooler = 先照算好的 { DEGREES($plannedC, $unit) } 就好。用 { DEGREES($waterC, $unit) } 的话更柔更甜，香气低些，时间要改成 { DURATIONS($times) }。想这样就说“凉一点”。
brew-weighed-more-leaf = 这个器具放 { GRAMS($plannedG) }刚好。放 { GRAMS($leafG) }的话，{ $alike ->
    [yes] 浓度一样
   *[no] 第一杯的浓度是原来的 { NUMBER($share, maximumFractionDigits: 1) } 倍
}，时间 { DURATIONS($times) }。想这样就说“多放茶叶”。
brew-weighed-less-leaf = 这个器具放 { GRAMS($plannedG) }刚好。放 { GRAMS($leafG) }的话，{ $alike ->
    [yes] 浓度一样
   *[no] 第一杯的浓度是原来的 { PERCENT($share) }
}，时间 { DURATIONS($times) }。想这样就说“少放茶叶”。
brew-weighed-longer = 先照上面的时间试。久一点，{ DURATIONS($times) }，第一杯的浓度是原来的 { NUMBER($share, maximumFractionDigits: 1) } 倍，也更容易苦涩。想这样就说“久一点”。
brew-weighed-shorter = 先照上面的时间试。短一点，{ DURATIONS($times) }，第一杯的浓度只有原来的 { PERCENT($share) }。想这样就说“短一点”。
brew-weighed-stronger = 上面是一般的浓度，先喝喝看。浓一点的话，放 { GRAMS($leafG) }，时间 { DURATIONS($times) }，第一杯的浓度是原来的 { NUMBER($share, maximumFractionDigits: 1) } 倍。想这样就说“浓一点”。
brew-weighed-lighter = 上面是一般的浓度，先喝喝看。淡一点的话，放 { GRAMS($leafG) }，时间 { DURATIONS($times) }，第一杯的浓度是原来的 { PERCENT($share) }。想这样就说“淡一点”。
brew-weighed-so-much-leaf = 时间是照 { GRAMS($plannedG) }算的。放 { GRAMS($leafG) }的话，时间 { DURATIONS($times) }，{ $alike ->
    [yes] 浓度一样
   *[no] 第一杯的浓度是原来的 { PERCENT($share) }
}。想这样就说“{ GRAMS($leafG) }”。
brew-weighed-so-hot = 时间是照 { DEGREES($plannedC, $unit) } 算的。用 { DEGREES($waterC, $unit) } 的话，时间要改成 { DURATIONS($times) }；水越热出味越快，也越容易苦涩。想这样就说“{ DEGREES($waterC, $unit) }”。
brew-weighed-no-further = 不用，以这些茶叶和这个茶器，往那边也调不了多少了。
brew-begin-when = 好。水烧好了就说“带我泡”，或者注好水说一声“注好了”，我来计时。
brew-still-there = 泡法仍照上面。
brew-calls-cold = 可以：说“带我泡”，放进冰箱时告诉我一声，好了我在这里叫您，只是半夜不叫。
brew-calls = 可以：说“带我泡”，水注好时告诉我一声，时间到我在这里叫您。
brew-no-further = 以这些茶叶和这个茶器，只能调到这里了。
brew-stays-warm-lidded = 茶留在里面、盖着盖，室温 { DEGREES(20, $unit) }时，大约 { DURATION($drunkAfterS) }降到 { DEGREES($drunkFromC, $unit) }，大约 { DURATION($lukewarmAfterS) }降到微温的 { DEGREES($lukewarmC, $unit) }；这是按大小和器壁算的，会差三分之一上下。茶汤先滤出来，免得一直泡；用保温套或温过的保温瓶可以更久。
brew-stays-warm-open = 茶留在里面，室温 { DEGREES(20, $unit) }时，大约 { DURATION($drunkAfterS) }降到 { DEGREES($drunkFromC, $unit) }，大约 { DURATION($lukewarmAfterS) }降到微温的 { DEGREES($lukewarmC, $unit) }；这是按大小和器壁算的，会差三分之一上下。盖个小碟子，或用温过的保温瓶，可以更久。
brew-stays-warm-insulated = 好的保温瓶盖紧了，茶大约 { DURATION($drunkAfterS) }内都在 { DEGREES($drunkFromC, $unit) }以上，会差三分之一上下。茶叶先滤掉再装，免得闷坏；只剩微温以后就别再放上几个小时。
brew-size-for-leaf = 这么多茶叶，大约要 { ML($volumeMl) }的器具。下面照这个大小算；大一点就淡些，小一点就浓些。
infusion-time = 第 { $n } 泡：{ DURATION($infusion-seconds) }。
mistake-no-such-infusion = 这个泡法只有 { $most } 泡。
standing-answer = { ANSWER($answer) }
standing-answer-or-shop = 如果这不是您要问的，请说“找店家”。
safety-unknown = 健康和安全的事我不想乱猜；若与身体有关，请问医生或药师。
answer-none-yet = 这个还没有常备回复；您就是店家，就不另外转了。
ask-when-answered = 您的问题店家收着，有空就会回，我不能保证多快。回复会自己发到这里，不用守着。
sorry-for-that = 抱歉让您不愉快。请说“找店家”，写下哪里不对，会由人来回复。
ask-pass-on = 这个我答不上来。要我转给店家吗？回复会发到这里。
choice-pass-on = 转给店家
    .typed = 好 / 是 / 好的 / 问吧 / 帮我问 / 帮我问一下 / 问问看 / 帮我转 / 好 问吧 / 转告 / 帮我转告 / 帮我转告店家 / 帮我转达 / 请转告 / 转告老板 / 帮我问老板 / 好 帮我问 / 好 帮我转告 / 好 帮我问老板 / 麻烦帮我问 / 麻烦帮我转告 / 麻烦你了 / 好 麻烦你
choice-leave-it = 不用了
    .typed = 不 / 不用 / 不用转 / 不用转了 / 不必转 / 别转 / 不转
choice-never-mind = 算了
    .typed = 不用 / 没事
ask-question = 要转告什么？请写在一条消息里。
ask-that = “{ $lastAsked }”要我转告这一句吗？想问别的，请写在一条消息里。
choice-pass-that-on = 转告这一句
    .typed = 好 / 是 / 好的 / 对 / 就这个 / 就这句 / 就问这个 / 问吧 / 帮我问 / 转吧
choice-ask-else = 问别的
    .typed = 别的 / 其他问题 / 问其他 / 不是这个
passed-on = 已转给店家。他们有空就会回，回复会发到这里。
lesson-to-shop = 课程由店家亲自安排。要我把您的问题转过去吗？
# with a booking: the file for the student's own calendar
lesson-calendar = 加到日历
lesson-calendar-cancelled = 从日历移除
lesson-calendar-notes = { $teacher ->
    [none] { "" }
   *[other] 授课：{ $teacher }。
 }{ $bring ->
    [none] { "" }
   *[other] 请带：{ $bring }。
 }


# the house itself
house-unknown-tap = 这个选项已经不能用了，请直接写下您想要的。
house-stumbled = 抱歉，这条消息我处理不了，已经记下了。请换个说法再试。
house-wordless = 这里本来有话要告诉您，但没能说出来，抱歉，店家会知道。如果是急事（例如正在泡的茶、快开始的课），请先照您已知道的做，或直接问店家。
house-rung = { DURATION($seconds) }

# the check of the flow files
flows-checked = { $flows } 个流程、{ $places } 个位置、{ $sentences } 个句子：没有问题。

# over the infusion ladder
ladder-title = 逐泡

# names of vessels, families and ways of brewing
vessel-gaiwan = 盖碗
vessel-clay-pot = 紫砂壶
vessel-porcelain-pot = 瓷壶
vessel-glass-pot = 玻璃壶
vessel-metal-pot = 金属壶
vessel-iron-pot = 铁壶
vessel-saucepan = 小汤锅
vessel-kyusu = 急须
vessel-mug = 马克杯
vessel-infuser-mug = 滤网杯
vessel-french-press = 法压壶
vessel-thermos = 保温瓶
vessel-tumbler = 玻璃杯
vessel-jar = 玻璃罐
vessel-cold-jar = 冷泡瓶
family-green = 绿茶
family-yellow = 黄茶
family-white = 白茶
family-oolong = 乌龙茶
family-black = 红茶
family-dark = 黑茶（普洱）
family-scented = 花茶
family-herbal = 花草茶
family-matcha = 抹茶
style-gongfu = 工夫泡
style-western = 大壶或马克杯
style-grandpa = 杯中留叶续水
style-cold = 冰箱冷泡
style-whisked = 点茶
style-cupping = 审评

# cautions, by their id
# 冲泡时的提醒。数值出处同英文文件
caution-keep-cold = 小心：全程放冰箱 5 °C 以下，瓶子要干净，一天内喝完。
caution-flower-allergy = 小心：对菊科花或花粉过敏就别喝；不确定请问医生。
caution-herb-allergy = 小心：对这种植物或同类的花、花粉、谷物过敏就别喝；不确定请问医生。
caution-hot-water = 小心：热水会烫伤，远离小孩，慢慢倒。
caution-very-hot-drink = 小心：等茶降到 65 °C 以下再喝。
caution-glass-shock = 小心：冷玻璃遇沸水会裂，先温一温。
caution-caffeine-adult = 小心：整壶的咖啡因可能超过 200 毫克，请分着喝或与人同喝。
caution-pregnancy = 怀孕或哺乳时，能喝多少请问医生或助产士。
caution-children = 含咖啡因的茶不适合幼儿；大一点的孩子请问医生。
caution-medicines = 正在服药的话，请问医生或药师这茶能不能一起喝。

# 冷泡时会问的。室温两小时：FDA 给家庭的建议，凭记忆；冰块、过滤、前一晚：一般做法，没有出处
cold-begin-before = 放在冰箱里要 { DURATION($seconds) }：想喝之前这么久放进去，或前一晚放，早上把茶叶拿出来。
cold-begin-by = 要在{ $wanted }喝，最晚{ $by }放进冰箱，早一两个小时也无妨。
cold-begin-evening = 要在{ $wanted }喝，最晚{ $by }就要放进冰箱。前一晚放更省事，早上把茶叶拿出来；多泡几个小时会浓一点，兑冷水就好。
cold-begin-late = 到那时只有 { DURATION($leftS) }，它要 { DURATION($seconds) }。现在放进去，会淡一点；或用热水泡浓，倒在冰块上。
cold-ready-at = { $begun }开始，{ $ready }就好了。
cold-ready-night = { $begun }开始，{ $ready }就好了。放到起床再把茶叶拿出来：会浓一点，兑冷水就好。
cold-stands = 在冰箱里多放几个小时没关系：会浓一点，兑冷水就好。一天内喝完。
cold-stands-hours = 在冰箱里放 { DURATION($seconds) }，大约是原来的 { NUMBER($strength, maximumFractionDigits: 1) } 倍浓，兑冷水就好。一天内喝完。
cold-stands-short = 不到它要的 { DURATION($seconds) }，会淡一点。
cold-stands-too-long = 别放那么久：全程放冰箱，一天内喝完。
cold-on-the-way = 要跟冰箱里一样冷才行：放保温袋加冰袋，或装进用冰水涮过的保温瓶。停着的车里太热。在温热处放超过两小时的，请倒掉。
cold-strain = 用滤网或咖啡滤纸倒进干净的瓶子；都没有的话，用瓶盖挡住茶叶，慢慢倒。
cold-taste-early = 随时可以用干净的勺子尝一口。味道合意就把茶叶拿出来；在那之前会慢慢变浓。
cold-is-ready = 放进冰箱满 { DURATION($seconds) }就可以把茶叶拿出来。拿不准就用干净的勺子先尝一口，味道合意就行。
cold-unchilled = 不建议：室温放好几个小时容易长细菌，冷泡要全程放冰箱。没有冰箱就用热水泡浓一点，再倒在冰块上。
cold-still-good = 一直放在 5 °C 以下的冰箱、瓶子干净、还没超过一天，就可以喝。在外面放过两小时以上的，请倒掉。
cold-lid = 要盖好：茶会吸冰箱的味道，也要保持干净。
cold-ice = 可以，用冰水或加冰块都行，只是泡得稍慢一点。


# 终端里的泡法
plan-title = { TEA($tea) } · { VESSEL($vessel) } · { ML($volumeMl) }
plan-title-family = { FAMILY($family) } · { VESSEL($vessel) } · { ML($volumeMl) }
plan-leaf = 茶叶  { GRAMS($leafG) }（约 { SPOONS($spoons) } 平茶匙）；干叶占茶器的 { PERCENT($fill) }
plan-water = 水  { DEGREES($waterC) }，每次 { ML($waterMl) }；总共烧 { ML($kettleMl) }
plan-water-cold = 水  冷水 { DEGREES($waterC) }，{ ML($waterMl) }；全程放冰箱
plan-clamped = 沸点  您那里是 { DEGREES($boilsAtC) }；{ $style ->
    [cupping] 请写在品评结果旁
   *[other] 时间已为此加长
}
plan-warm = 温器  先用热水温过茶器，再倒掉
plan-rinse = 润茶  用同样的水 { DURATION($seconds) }；这道不喝
plan-rung = { DURATION($seconds) }
plan-caffeine = 咖啡因  总共约 { NUMBER($usualMg, maximumFractionDigits: 0) } 毫克（茶叶有别，{ NUMBER($leastMg, maximumFractionDigits: 0) } 到 { NUMBER($mostMg, maximumFractionDigits: 0) }）
plan-cup = { NUMBER($guests) } 杯，每杯约 { ML($cupMl) }
plan-way-boil = 水一停止沸腾就用。
plan-way-mix = { $nth ->
    [1] 没有温度计：
   *[other] 或用 {""}
}{ ML($boilingMl) }沸水加 { ML($coolMl) }凉开水（± { SPREAD($uncertaintyC, $unit) }）。
plan-way-wait = { $nth ->
    [1] 没有温度计：水烧开后
   *[other] 或水烧开后
}掀盖放 { DURATION($seconds) }（± { SPREAD($uncertaintyC, $unit) }）。
plan-way-pitcher = 或倒过凉的公道杯 { NUMBER($pours) } 次（± { SPREAD($uncertaintyC, $unit) }）。
plan-chart-strength = 浓度，毫克/毫升
plan-chart-left = 叶中所余

# 为什么这样泡
why-leaf = { GRAMS($leafG) }茶叶配 { ML($waterMl) }水，每克 { NUMBER($mlPerG) } 毫升；干叶占茶器的 { PERCENT($fill) }，有舒展的空间。
why-water-warmed = { DEGREES($waterC) } 的水（您那里 { DEGREES($boilsAtC) } 沸腾）碰到茶叶和器壁后是 { DEGREES($warmC) }；茶器若是冷的只有 { DEGREES($coldC) }，温器多得 { NUMBER($costC) } 度。
why-water-unwarmed = { DEGREES($waterC) } 的水（您那里 { DEGREES($boilsAtC) } 沸腾）在冷的茶器里降到 { DEGREES($coldC) }；不温器少了 { NUMBER($costC) } 度，时间已为此加长。
why-water-cold = { DEGREES($waterC) } 的水带出甜味，把大部分苦味留在叶里，只是要用小时来算。
why-times = { DURATION($firstS) }让第一杯到 { NUMBER($strength, maximumFractionDigits: 1) } 毫克/毫升；剩下的出得慢，所以 { NUMBER($count) } 泡里的最后一泡要 { DURATION($lastS) }，有 { NUMBER($lastStrength, maximumFractionDigits: 1) } 毫克/毫升。
why-time = { DURATION($firstS) }让茶汤到 { NUMBER($strength, maximumFractionDigits: 1) } 毫克/毫升；这些茶叶能给的，{ NUMBER($count) } 泡就给完了。

# how it tasted
ask-taste = 喝起来怎么样？
ask-taste-nearest = 明白了，最接近哪一种？
ask-remember-taste = 要我替您记住吗？
choice-remember = 记住
    .typed = 好 / 是 / 好的
choice-how-was-it = 说说味道
choice-bitter = 苦涩
choice-weak = 太淡
choice-flat = 平淡
choice-sour = 发酸
choice-lost-scent = 没香气
choice-right = 刚好
    .typed = 刚好 / 刚刚好 / 好喝 / 很好喝 / 不错 / 很不错 / 赞 / 很好 / 很赞 / 正好 / 完美
taste-cause-bitter = 苦涩多半是水太热，或泡太久。
taste-cause-strong = 太浓多半是茶叶放多了，或泡太久。
taste-cause-dry = 口干、发涩是茶多酚出得多：水太烫、泡太久都会；新的生普、浓的红茶和碎叶本来就多。
taste-cause-weak = 太淡多半是时间不够，或茶叶太少。
taste-cause-sour = 发酸或有闷味，多半是泡得太久、盖着闷了。
taste-cause-flat = 平淡多半是水不够热，叶子没有舒展开。
taste-cause-lost-scent = 水不够热，或出汤后还盖着盖子，香气就跑了。
taste-cause-right = 那就好。
cup-reckoned-for = 照这个算：{ VESSEL($vessel) } { ML($volumeMl) }。
cup-heat-over = { DEGREES($value, $unit) } 对这茶偏热，一般用 { DEGREES($usual, $unit) }。水越热出味越多，苦涩的部分更是。
cup-heat-under = { DEGREES($value, $unit) } 对这茶偏凉，一般用 { DEGREES($usual, $unit) }。水不够热，出味就少。
cup-time-over = 泡了 { DURATION($value) }，一般是 { DURATION($usual) }，{ $infusion ->
    [1] 这杯
   *[other] 第 { $infusion } 泡
}的浓度大约是平常的 { NUMBER($share, maximumFractionDigits: 1) } 倍。
cup-time-under = 泡了 { DURATION($value) }，一般是 { DURATION($usual) }，{ $infusion ->
    [1] 这杯
   *[other] 第 { $infusion } 泡
}的浓度大约只有平常的 { PERCENT($share) }。
cup-leaf-over = 放了 { GRAMS($value) }茶叶，一般是 { GRAMS($usual) }，浓度大约是平常的 { NUMBER($share, maximumFractionDigits: 1) } 倍。
cup-leaf-under = 放了 { GRAMS($value) }茶叶，一般是 { GRAMS($usual) }，浓度大约只有平常的 { PERCENT($share) }。
cup-remedy = 下次：{ LIST($parts) }。
cup-next-heat = 水温 { DEGREES($usual, $unit) }
cup-next-time = 时间 { DURATION($usual) }
cup-next-leaf = 茶叶 { GRAMS($usual) }
cup-as-usual = 照您说的，这杯泡得跟我算的差不多，剩下的就看口味了。
taste-water-down = 下次水温降到 { DEGREES($waterC, $unit) }（这次是 { DEGREES($fromC, $unit) }）。
taste-water-up = 下次水温升到 { DEGREES($waterC, $unit) }（这次是 { DEGREES($fromC, $unit) }）。
taste-strength-down = 下次早点出汤，茶汤淡约 { PERCENT($share) }。
taste-strength-up = 下次泡久一点，茶汤浓约 { PERCENT($share) }。
taste-leaf-down = 下次茶叶少放约 { PERCENT($share) }。
taste-leaf-up = 下次茶叶多放约 { PERCENT($share) }。
taste-likely = 有可能。
taste-stays = 那就照这样。
taste-far-enough = 能调的都调了，也许换一种茶更合您口味。
taste-remembered = 记住了，这一类茶都照这样。
taste-kept = （照您对{ FAMILY($family) }的口味：{ LIST($parts) }。）
taste-mended = （上一杯{ $taste ->
    [bitter] 苦涩
    [strong] 太浓
    [dry] 发涩
    [weak] 太淡
    [flat] 平淡
    [sour] 发酸
   *[other] 没香气
 }，这次{ LIST($parts) }。说“记下来”就留着，说“恢复平常”就不改。）
brew-unknown-tea = “{ $unknownTea }”我不认得，这是按它那一类算的。
mistake-number-in-words = 这里需要一个数字，例如 150。

# Telegram: how the bot presents itself, what its menu offers, and what a tap there says
telegram-name = 炉边茶话
telegram-about = 您的茶、您的壶：放多少、多热、多久。
telegram-description =
    告诉我您有什么茶、用什么器具泡，我会算出茶量、水温和每一泡的时间，泡的时候也陪在一旁。
    课程也可以问我。答不了的我会转给店家，回复会送到这里。
telegram-command-brew = 这款茶怎么泡
telegram-command-my-tea = 您的口味、茶具和泡过的茶
telegram-command-lessons = 店里的课程
telegram-command-shop = 找店家
telegram-command-language = 英文或中文
telegram-command-back = 上一步
telegram-command-start-over = 重新开始
telegram-says-brew = 泡一泡茶
telegram-says-my-tea = 我的茶
telegram-says-lessons = 有什么课程？
telegram-says-shop = 我想找店家
telegram-says-language = English / 中文
telegram-says-back = 上一步
telegram-says-start-over = 重新开始
telegram-token-refused = Telegram 不接受这个令牌。请到创建机器人的地方重新获取，再写进设置。
telegram-unreachable = 目前连不上 Telegram。我会继续试，其他功能照常。
telegram-second-copy = 另一份程序正用同一个令牌连 Telegram，而只能有一份。请停掉另一份，或给这一份自己的机器人。

# channels/mail
mail-unreachable = 连不上邮件服务器，信会等到连上再寄。请看 NINTHPOUR_SMTP_URL。
mail-login-refused = 邮件服务器不接受这组登录，信会等到 NINTHPOUR_SMTP_URL 改对再寄。
mail-foot = 有变动的话，直接回复这封邮件就好，店里会有人看。

# core/lessons: 课程里的错误
mistake-lesson-title-missing = 这节课叫什么名字？
mistake-lesson-past = { $starts } 已经过了，请给一个之后的时间。
mistake-lesson-day-missing = 是哪一天？
mistake-lesson-time-missing = 几点开始？
mistake-lesson-level-unclear = 这节课给初学、有些基础，还是进阶的人？
mistake-lesson-seats-missing = 有几个座位？
mistake-lesson-seats = 座位不能是 { $seats } 个，{ $most ->
    [1] 最多 1 个
   *[other] 须为 1 到 { $most } 个
 }。
mistake-lesson-minutes = 一节课须为 1 到 { $most } 分钟，不能是 { $minutes } 分钟。
mistake-lesson-ends-before-start = 这样会在 { $starts } 开始、{ $ends } 结束。请把两个时间再说一次。
mistake-lesson-time-unreadable = “{ $starts }”我读不出是哪一天几点。
mistake-lesson-hour-unclear = “{ $words }”是早上还是晚上？
mistake-lesson-hour-never = 那一天 { $zone } 的时钟往前拨，不会出现 { $starts }。请换一个时间。
mistake-lesson-hour-twice = 那一天 { $zone } 的时钟往回拨，{ $starts } 会出现两次。请换一个时间。
mistake-lesson-series-hour-never = { $zone } 的时钟不会出现 { $starts }，那节课在 { $begins } 开始。
mistake-lesson-series-hour-twice = { $zone } 的时钟会出现两次 { $starts }，那节课在第一次时开始。
mistake-lesson-date-unreadable = 没有“{ $words }”这一天。
mistake-lesson-date-unclear = “{ $words }”可以是两个不同的日子。请把月份写清楚，例如 12月5日。
mistake-lesson-weekday-differs = { $date } 不是那个星期几。哪一个才对？
mistake-lesson-zone-unknown = 没有叫“{ $zone }”的时区。写法像 Asia/Shanghai 这样。
mistake-lesson-sentence-too-long = 请用一句话说，最多 { $most } 个字。
mistake-lesson-there-already = 现在就是 { WHEN($starts) }。要改到什么时候？
mistake-lesson-changed-meanwhile = 刚才有人改了这节课，现在是 { WHEN($starts) } 开始。请再看一次。
mistake-lesson-cancelled = 这节课已经取消了。
mistake-lesson-not-cancelled = 这节课没有停开。
mistake-lesson-over = 这节课已经结束了。
mistake-lesson-started = 这节课已经开始了。
mistake-lesson-already-booked = 您已经报名这节课了。
mistake-lesson-already-back = 对方已经又订了这节课。
mistake-lesson-booking-unknown = 没有找到这个报名。
mistake-lesson-booking-left = 这个报名已经退掉了。
mistake-lesson-booking-not-seated = 这个报名还没有座位。
mistake-lesson-leave-closed = 座位可以退到 { WHEN($until) } 为止。如果不能来，请跟店里说一声。
mistake-lesson-offer-gone = 保留的时间已过，座位已经让给下一位。
mistake-lesson-offer-open = 请先决定要不要为您保留的座位。
mistake-lesson-full = { $free ->
    [0] 已经没有座位了。
   *[other] 只剩 { $free } 个座位。
}
mistake-lesson-seats-below-taken = 已经有 { $taken } 个座位有人，{ $seats } 个不够。
mistake-lesson-door-closed = 开课前一小时起才能点名。

# content: 课程或报名表格里的错误
lesson-table-place = 第 { $line } 行，{ $column }：{ $mistake }
lesson-table-there = 已经有 { $file } 了，请换个文件名。
lesson-table-past = 另有 { $count } 节已经过了，没有收进来。
mistake-lesson-table-series = 定期课程请写在 data/shop/lessons.yaml 或在聊天里排；这里一节一节写。
mistake-lesson-table-tea = 茶品目录里没有“{ $words }”。
mistake-lesson-table-empty = 表格是空的；第一行须写列名。
mistake-lesson-table-column-missing = 缺少这一列。
mistake-lesson-table-column-unknown = 没有这一列。
mistake-lesson-table-column-twice = 这一列出现两次。
mistake-lesson-table-id = “{ $words }”不能用在链接里：最多 40 个字符，只用 A–Z、a–z、0–9、点、连字符、下划线。
mistake-lesson-table-number = “{ $words }”不是整数。
mistake-lesson-table-choice = “{ $words }”不是以下之一：{ $allowed }。
mistake-lesson-table-instant = “{ $words }”不是 UTC 时间，写法像 2026-12-06T02:00Z。
mistake-lesson-table-twice = “{ $words }”在第 { $earlier } 行已经有了。
lesson-table-missing = 没有 { $file } 这个文件。
mistake-lesson-table-cells = 这一行的格数太少或太多；每一行要和第一行的列数一样。
mistake-lesson-table-quote = 这里的引号夹在格子中间；请把整格放进引号，里面的引号写两次。
mistake-lesson-table-quote-open = 这一行开了引号，后面一直没有关上。
mistake-lesson-table-encoding = 这里有不是 UTF-8 的字符；请用 UTF-8 重新保存。
mistake-lesson-table-no-yaml = 从这里起不是 YAML：请看看行首的空格、冒号和引号。
mistake-lesson-table-no-list = 这里应该是一份清单：每一项以连字符开头。
mistake-lesson-table-no-item = 这里应该写出各列，像“seats: 2”。
mistake-lesson-table-no-text = 这里应该是文字或数字，不是清单。
mistake-lesson-table-no-tea = 至少要有一款茶。
mistake-lesson-table-tea-name = 茶品目录里这款茶叫“{ $words }”；名称请在 data/teas/catalogue.yaml 里改。
mistake-lesson-row-no-lesson = 没有“{ $words }”这节课。
mistake-lesson-row-nameless = 缺少名字。
mistake-lesson-row-mail = “{ $words }”不是邮箱地址；没有地址的人请留空。
mistake-lesson-row-there = { $name } 已经在这节课的名单上了。
mistake-lesson-row-full = { $free ->
    [0] 已经没有座位了；要候补请在 standing 列写“waiting”。
   *[other] 只剩 { $free } 个座位；要候补请在 standing 列写“waiting”。
}
mistake-lesson-row-waits-untold = 候补的人是用邮件通知空位的，这里需要地址。
mistake-lesson-row-new = 这一格由系统填写；新报名的人请留空。
mistake-lesson-row-unknown = 没有“{ $words }”这个报名；新报名的人请留空。
mistake-lesson-row-edited = 这个报名现在不是这样（{ $seats } 个座位）；已有的报名请在聊天里改，不在这里改。

# the hand-over to the shop
ask-waits = 您的问题已留给店家。店里现在没有人在线，回复会发到这里。
ask-enough = 您已有五个问题在等店家，请先等那些有了回复。
ask-kept-answer = 店家说：{ $heard-kept-answer }
shop-told-answer =
    您问：{ $question }
    店家回复：{ $text }
shop-told-correction =
    您问：{ $question }
    更正：店家先前的回复有误，请以这个为准：{ $text }
shop-told-answer-about = 回复这个问题：{ $question }
shop-told-correction-about = 更正这个问题的回复：{ $question }
shop-told-question = 有客人问：{ $question }
shop-told-waiting = { $n }. { $question }
shop-told-kept = { $n }. { $question } – { $reply }
shop-told-earlier = 这位客人先前问：{ $question } – 当时的回复：{ $answer }
shop-told-same = 以前有人问：{ $question } – 当时的回复：{ $answer }
shop-told-gone = （已不再保存）
shop-told-code = 还没有店主。{ $minutes } 分钟内把 { $code } 发给这里的人，就成为店主。
shop-welcome = 您现在是店主了。客人的问题会转到这里；写“问题”就能看到还在等的。
shop-code-wrong = 这个代码无效，或已经失效。
shop-not-yours = 这只限店主使用。
shop-nothing-waiting = 没有问题在等。
shop-waiting = 有 { $count } 个问题在等，最早的排在前面。
shop-question = 客人用{ $it-language ->
    [zh-Hant] 繁体中文
    [zh-Hans] 简体中文
   *[en] 英文
}问：{ $it-question }
shop-write-answer = 请写下回复，会一字不改地发给客人。
shop-which-one = 您写的时候又来了一个问题。这是回复“{ $it-question }”吗？
shop-left-waiting = 它仍留在等待的问题里。
shop-answered = 已发给客人，回复的是：{ $it-question }
shop-answered-waits = 这位客人目前不接收消息：您给“{ $it-question }”的回复先留着，客人回来就会收到。
shop-for-whom = 这听来是要我做的事。要当作“{ $it-question }”的回复发给客人吗？
shop-none-sent = 这里没有已发出的回复，所以没有可以更正的。
shop-sent = 已发出的回复，最新的在前。要更正哪一个？
shop-ask-correction = 客人问：{ $sent-question } – 您回复：{ $sent-reply } – 请写下正确的回复，发出前会先给您看。
shop-correction-sure = 问“{ $sent-question }”的客人会收到这个，并注明是更正：{ $draft } – 要发吗？
shop-as-sent = 回复维持原样。
shop-corrected = 已作为更正发给客人。
shop-corrected-waits = 改好了。这位客人目前不接收消息：更正先留着，客人回来就会收到。
shop-corrected-kept = 留作常备的那个回复也一并改好了。
shop-corrected-meanwhile = 店里有人刚刚更正过了。
shop-ask-wording = 这个回复要留给哪个问题？请写成一般人会问的样子，不要写名字。客人问的是：{ $it-question }
shop-kept = 留好了。有人这样问，就会得到这个回复。
shop-kept-as-asked = 留好了。有人这样问，就会得到这个回复；若问题原话的主人要我忘记，它也会一并删去。
shop-nothing-kept = 没有留着的回复。
shop-standing = 留着的回复，最新的在前：
shop-dropped = 已删去。
mistake-question-answered = 这个问题已不用回：店里有人回过了，或客人收回了。
mistake-answer-same = 现在的回复就是这样写的。
mistake-question-gone = 这个问题和回复已不再保存。
mistake-kept-answer-gone = 这个回复已不再保存。
choice-shop-questions = 客人的问题
    .typed = 问题 / 提问
choice-shop-question = 回复 { $n }
    .typed = 第一个 / 第一题 / 第一条
choice-shop-same = 再发那个回复
choice-shop-send-it = 是，发给这位
choice-shop-other = 不是，看看有哪些问题
choice-shop-later = 先放着
choice-shop-next = 下一个问题
    .typed = 下一个
choice-shop-done = 就这些
    .typed = 完成
choice-shop-correct = 更正这个回复
    .typed = 更正 / 改正 / 更正回复 / 改回复 / 写错了 / 答错了 / 这个错了 / 改一下
choice-shop-correct-n = 更正 { $n }
choice-shop-another-answer = 是另一个回复
    .typed = 不是这个 / 另一个
choice-shop-as-sent = 维持原样
    .typed = 算了 / 不用了 / 不改了 / 照旧
choice-shop-send-correction = 是，发出更正
    .typed = 发出 / 发吧 / 发 / 发送
choice-shop-other-words = 重新写回复
choice-shop-keep = 留作常备回复
    .typed = 留着 / 存起来 / 存 / 留着 / 记下来 / 当常备回复
choice-shop-as-asked = 照客人的原话
choice-shop-keep-not = 不用留
choice-shop-standing = 留着的回复
choice-shop-drop = 删去 { $n }

# what is kept of a person, and forgetting it
my-data-page = 这里存有的关于您的一切都在一个文件里：就在本页最下方的“存有我的什么”。
my-data-why = 为什么要存：您写的和我答的，存 { $messageDays } 天，免得漏掉或说两遍。您的茶具、口味和最近几泡，省得我再问。您的提问和报名，好让店家回答、给您留座；这些店家看得到，其他人我一概不给。{ $idleDays ->
        [0] 存到您说“忘记我”为止。
       *[other] { $idleDays } 天没来过就全部删掉；说“忘记我”就马上删。
    }备份再过 { $backupDays } 天也会删掉。
my-data-here = 以下是这里存有的关于您的一切：
    { $everything }
other-device-page = 本页最下方的“在另一台设备上看这张小笺”会给一组号码。在那台设备打开本页，把号码填在页脚，两边就都看得到。
other-device-telegram = 这段对话在您所有设备的 Telegram 里都有，在那边打开就行。
other-device-here = 这里的对话带不走。在店家的网页上，页脚可以取一组号码，在另一台设备上打开同一张小笺。
forget-page = 这一页上还看得到的只在您的设备上；按最下方的“为下一位换一张新笺”就会清掉。
# the guided brew
choice-guide = 带我泡
    .typed = 带我 / 带着我泡 / 引导我 / 跟着做 / 跟着你做 / 跟住做 / 陪我泡 / 一步一步 / 教我泡 / 带我冲 / 教我冲 / 从头带我泡
choice-guide-ready = 备好了
    .typed = 好 / 弄好了 / 搞定 / 搞定了 / 摆好了 / 准备好了 / 好了 / 都好了 / 都准备好了 / 好啦 / 好咯
choice-guide-done = 做好了
    .typed = 好 / 弄好了 / 搞定 / 搞定了 / 完成 / 好了 / 下一步 / 温好了 / 温过了 / 温了 / 倒了 / 倒掉了 / 温咗 / 倒咗 / 好啦 / 好咯
choice-guide-in = 茶叶放好了
    .typed = 好 / 好了 / 放好了 / 放了 / 放进去了 / 好啦 / 好咯
choice-guide-rinsed = 洗好了
    .typed = 好 / 弄好了 / 搞定 / 搞定了 / 洗完了 / 好了 / 洗过了 / 洗了 / 倒掉了 / 好啦 / 好咯
choice-guide-filled = 注好水了
    .typed = 好 / 好了 / 注水了 / 注好了 / 水倒好了 / 倒好水了 / 倒水了 / 倒进去了 / 水倒进去了 / 加好水了 / 加水了 / 冲了 / 冲水了 / 放进冰箱了 / 放冰箱了 / 做好了 / 好啦 / 好咯
choice-guide-poured-on = 水注上去了
    .typed = 注上去了 / 倒了 / 倒好了 / 倒上了 / 刚倒了
choice-guide-poured = { $style ->
    [cold] 滤好了
    [grandpa] 喝到三分之一了
   *[other] 出汤了
}
    .typed = 好 / 好了 / 倒出来了 / 出汤 / 出汤了 / 出好了 / 倒好了 / 倒了 / 倒出了 / 滤好了 / 拿出来了 / 喝了 / 我喝了 / 已经喝了 / 好啦 / 好咯
choice-guide-next-filled = { $style ->
    [cold] 滤好了，下一泡也注好水
    [grandpa] 喝了，也添好水了
   *[other] 出汤了，下一泡也注好水
}
    .typed = 注好水了
choice-guide-at-night = { $at } 照样叫我
    .typed = 半夜也叫我 / 照样叫我
choice-guide-longer = 泡久了
    .typed = 太久了 / 迟了
choice-guide-taste = { $item ->
    [right] 刚好
    [bitter] 苦
   *[weak] 淡
}
choice-guide-why = 为什么
choice-guide-more = 其他情况
    .typed = 更多 / 其他
choice-guide-seconds = { DURATION($item) }
choice-guide-degrees = { DEGREES($item, $unit) }
choice-guide-people = { $item } 位
choice-guide-pause = 歇一歇
    .typed = 等等 / 等一下 / 暂停 / 我要出门一下 / 出门一下 / 等我一下 / 我离开一下
choice-guide-skip = 跳过这一泡
    .typed = 跳过
choice-guide-cooler = 水凉了些
    .typed = 水凉了 / 水冷了 / 水放凉了
choice-guide-new-kettle = 换了新热水
    .typed = 重新烧水了 / 重新烧了 / 又烧了 / 又烧热了 / 再烧热了 / 烧开了 / 换热水了 / 水又烧开了 / 换了热水 / 再烧水了
choice-guide-guests = 人数变了
    .typed = 客人多了 / 人多了 / 有人来了 / 人少了
choice-guide-go-on = 接着泡
    .typed = 继续 / 回来了
choice-guide-finish = 泡到这里
    .typed = 收杯 / 结束 / 够了 / 喝够了 / 不喝了 / 不泡了 / 到此为止 / 泡完了 / 喝完了 / 就到这里
choice-guide-end-and-begin = 先结束它，泡这款
choice-guide-end-for-other = 换器具重新泡
    .typed = 重新泡 / 换器具 / 换那个 / 换 / 重新开始 / 重来 / 重新来
choice-guide-poured-in-time = { $style ->
    [cold] 准时滤好了
   *[other] 准时出汤了
}
    .typed = 准时 / 只是忘了按 / 忘了按 / 只忘了按 / 早就倒了 / 有准时倒
choice-guide-it-stood = 一直泡着
    .typed = 一直泡 / 还泡着 / 忘了倒 / 泡到现在 / 忘了
choice-guide-was-cold = 一直在冰箱里
    .typed = 是 / 是的 / 对 / 有 / 在冰箱 / 冰箱里
choice-guide-was-not-cold = 没有，或不确定
    .typed = 没有 / 不是 / 不确定 / 不知道 / 室温 / 放在桌上
choice-guide-brew-again = 照样再泡
    .typed = 再来 / 同样再泡一次
guide-two-brews = 您的{ $name }还在泡，到第 { $n } 泡。一次顾一壶比较清楚。
guide-set-out = 备具：{ VESSEL($brew-vessel) }、茶叶 { GRAMS($brew-leafG) }（约 { SPOONS($brew-spoons) } 平茶匙）。烧水 { ML($brew-kettleMl) }，到 { DEGREES($brew-waterC, $memory-unit) }。
guide-set-out-bags = 备具：{ VESSEL($brew-vessel) }、茶包 { $brew-bags } 个。烧水 { ML($brew-kettleMl) }，到 { DEGREES($brew-waterC, $memory-unit) }。
guide-set-out-powder = 备具：茶碗、茶筅、细筛、茶粉 { GRAMS($brew-leafG) }。烧少许水到 { DEGREES($brew-waterC, $memory-unit) }。
guide-set-out-cold = 备具：干净的{ VESSEL($brew-vessel) }、茶叶 { GRAMS($brew-leafG) }（约 { SPOONS($brew-spoons) } 平茶匙）、冷水 { ML($brew-waterMl) }。
guide-set-out-pitcher = 旁边放公道杯，先倒进去再分，每杯才一样。
guide-set-out-guests = 摆 { $brew-guests } 个杯子，自己的放最后。
guide-care-table = 水壶和电线离桌边远一点，别让小孩靠近。
guide-care-lid = 捏住碗沿和盖钮；热气从盖缝出来，缝口朝外。
guide-warm = 用热水温茶具，再把水倒掉。
guide-measure = 放茶叶 { GRAMS($brew-leafG) }，约 { SPOONS($brew-spoons) } 平茶匙。
guide-measure-bags = 放入茶包 { $brew-bags } 个，线挂在杯沿外。
guide-smell = 盖上一会儿，闻闻温热的干茶香。
guide-rinse = 注入 { DEGREES($brew-waterC, $memory-unit) } 的水，数到 { $brew-rinseS }，倒出。这一道不喝。
guide-count = 第 { $brew-n } 泡：高处注水，数到 { $brew-seconds }，低处出汤，沥干。
guide-counting = 现在数到 { $brew-seconds }，出汤后说一声“倒了”。
guide-water-on = 那就当作水刚注下去。如果已经出汤，说一声“倒了”。
guide-fill = 第 { $brew-n } 泡，{ DURATION($brew-seconds) }：注入 { DEGREES($brew-waterC, $memory-unit) } 的水 { ML($brew-waterMl) }，注好就按一下。
guide-top-up = 第 { $brew-n } 泡，{ DURATION($brew-seconds) }：再添满 { DEGREES($brew-waterC, $memory-unit) } 的水，添好就按一下。
guide-fill-cold = 第 { $brew-n } 泡，在冰箱里 { DURATION($brew-seconds) }：注入冷水 { ML($brew-waterMl) }，盖好放进冰箱，再按一下。
guide-cups = { $brew-guests } 位，每位约 { ML($brew-cupMl) }。
guide-invite = 先请客人，手掌向上；主人陪饮。
guide-holding = 第 { $brew-n } 泡：从您按下起 { DURATION($brew-seconds) }。到时我叫您。
guide-holding-till-evening = 第 { $brew-n } 泡要到 { $from } 才好。为了不吵您休息，我 { $to } 就叫您，早一点，味道也差不多了。
guide-holding-till-morning = 第 { $brew-n } 泡要到 { $from } 才好。冷泡不急，不吵您睡觉，我 { $to } 再叫您；到时如果太浓，兑点凉开水就好。
guide-told-clock = { CLOCK($wall) }
guide-told-until = 第 { $n } 泡，{ DURATION($seconds) }
guide-pour-now = { $late ->
    [no] { $style ->
        [cold] 第 { $n } 泡好了：取出来滤掉茶叶。
        [grandpa] 第 { $n } 泡可以喝了。留三分之一在杯里再添水。
       *[other] 现在出汤，第 { $n } 泡：低处倒，沥干。
    }
    [some] { $style ->
        [cold] 第 { $n } 泡好了：取出来滤掉茶叶。
        [grandpa] 第 { $n } 泡可以喝了。留三分之一在杯里再添水。
       *[other] 现在出汤，第 { $n } 泡。抱歉，我叫晚了 { DURATION($lateS) }。
    }
   *[long] { $style ->
        [cold] 第 { $n } 泡 { DURATION($lateS) }前就好了；抱歉，我刚才不在。现在滤掉茶叶，太浓就兑点凉开水。
        [grandpa] 第 { $n } 泡 { DURATION($lateS) }前就可以喝了；抱歉，我刚才不在。留三分之一在杯里再添水。
       *[other] 第 { $n } 泡本该在 { DURATION($lateS) }前出汤；抱歉，我刚才不在。若还泡着，先尝一口再请客人喝。
    }
}
guide-told-poured = 第 { $n } 泡：{ DURATION($seconds) }。
guide-told-below = 接在下面。
guide-told-late = 晚了 { DURATION($seconds) }出汤，{ $next }。
guide-told-early = 早了 { DURATION($seconds) }出汤，{ $next }。
guide-told-rest-more = 茶叶歇了一会儿，这一泡多泡 { DURATION($seconds) }。
guide-told-rest-less = 茶叶歇了一会儿，这一泡少泡 { DURATION($seconds) }。
guide-told-next-more = 这一泡多泡 { DURATION($seconds) }
guide-told-next-less = 这一泡少泡 { DURATION($seconds) }
guide-told-next-same = 下一泡照旧
guide-told-next-none = 茶味已经泡尽了
guide-told-water = 之后用 { DEGREES($waterC, $unit) } 的水，{ $next }。
guide-told-drawn = 好，那就 { DURATION($seconds) }。
guide-told-longer = 之后泡久一点，{ $next }。
guide-told-shorter = 之后泡短一点，{ $next }。
guide-told-next-paced = 这一泡照旧，下一泡大约 { DURATION($seconds) }。
guide-told-pace-end = 以这些茶叶和这个茶器，只能调到这里了。
guide-told-guests = { $guests } 位：每位约 { ML($cupMl) }。
guide-told-guests-two = { $guests } 位，一泡每位只有 { ML($cupMl) }：两泡并在公道杯里再分。
guide-told-later = 第 { $n } 泡大约 { DURATION($seconds) }；前面几泡出汤以后会再算一次。
guide-told-now = 现在是第 { $n } 泡（大约共 { $ends } 泡）：{ DURATION($seconds) }，水 { DEGREES($waterC, $unit) }，茶叶 { GRAMS($leafG) }。
guide-told-left = 第 { $n } 泡（大约共 { $ends } 泡）正在泡，还有 { DURATION($seconds) }：水 { DEGREES($waterC, $unit) }，茶叶 { GRAMS($leafG) }。
guide-told-whisk = 茶粉 { GRAMS($leafG) }，{ DEGREES($waterC, $unit) } 的水 { ML($waterMl) }，刷大约 { DURATION($seconds) }。
guide-told-spent = 茶味已经泡尽了。
guide-told-taste-right = 好，就照这样。
guide-told-taste-far = 能调的都调了；换一款茶也许更合您。
guide-told-taste-stronger = 之后浓一点，{ $next }。这类茶的口味我记住了。
guide-told-taste-lighter = 之后淡一点，{ $next }。这类茶的口味我记住了。
guide-told-taste-water = 之后用 { DEGREES($waterC, $unit) } 的水，{ $next }。这类茶的口味我记住了。
guide-told-taste-next-stronger = 下次浓一点；这类茶的口味我记住了。
guide-told-taste-next-lighter = 下次淡一点；这类茶的口味我记住了。
guide-told-taste-next-water = 下次用 { DEGREES($waterC, $unit) } 的水；这类茶的口味我记住了。
guide-told-taste-more-leaf = 茶叶已经放了；下次我说多一点。这类茶的口味我记住了。
guide-told-taste-less-leaf = 茶叶已经放了；下次我说少一点。这类茶的口味我记住了。
guide-told-as-poured = 实际泡法
guide-told-tea = { TEA($tea) }
guide-told-family = { FAMILY($family) }
guide-ask-taste = 味道如何？愿意的话按一下。
guide-ask-how-long = 大约泡了多久？
guide-ask-more = 有什么变了？
guide-ask-guests = 现在几位喝？
guide-ask-stood = { $style ->
    [cold] 第 { $n } 泡 { DURATION($sinceS) }前就好了。是一直泡着，还是只忘了按？
   *[other] 第 { $n } 泡本该在 { DURATION($sinceS) }前出汤。是一直泡着，还是只忘了按？
}
guide-stood-caution = 那先尝一口再分，会很浓。
guide-ask-cold = 湿茶叶放了 { DURATION($awayS) }。是不是一开始就沥干、盖好、放进冰箱？
guide-rinse-again = 那先用开水冲一次倒掉，今天喝完。
guide-throw-away = 那还是丢掉吧：湿茶叶在室温会长细菌。
guide-kept = 记下来了，当作您泡这款茶的平常泡法：下次只写茶名就好。
guide-other-vessel = 现在这壶是照{ VESSEL($brew-vessel) } { ML($brew-volumeMl) }算的。要先把这壶泡完，还是换{ VESSEL($vessel) } { ML($volumeMl) }、用新茶叶重新泡？
guide-caffeine = 这一壶到现在约出了 { NUMBER($mg, maximumFractionDigits: 0) } 毫克咖啡因（{ NUMBER($leastMg, maximumFractionDigits: 0) } 到 { NUMBER($mostMg, maximumFractionDigits: 0) }，茶叶各有不同）。
guide-noted-already = 已经记下了。
guide-not-followed-asked = 这句我不太确定是什么意思；说“找店家”就把问题转过去。
guide-calls-at = { $at } 我会在这里叫您，不用另外设置。
guide-calls-when-filled = 时间到我会叫您：水一注好就说“注好水了”。
guide-left = { $left ->
    [1] 这大概是最后一泡了。
   *[other] 连这一泡，大约还能泡 { $left } 泡。
}
guide-held-as-told = 那就当作泡了 { DURATION($seconds) }。
guide-leaf-does-not-wait = 茶叶不等人：要走就先出汤再按。泡了多久我会算进去。
guide-advice = 看味道决定：苦涩就水凉一点或短一点；太淡就泡久一点，或下一壶多放茶叶。现在先不改，喝了告诉我味道。
guide-times-follow = 每一泡的时间都照茶叶里还剩多少算好了。哪一杯淡了就说一声，后面的泡久一点；苦了就短一点。
guide-leaf-is-in = 已经下的茶叶不用捞，我改的是时间；下一壶再调茶叶量。
guide-quiet = 过了一小时。盖子留一条缝，茶叶还能放几个小时。接着泡吗？
guide-quiet-long = 茶叶已经放了 { DURATION($awayS) }。接着泡吗？
guide-quiet-dry = 茶叶放好了，还没出汤。接着泡吗？
guide-quiet-hold = { $brew-style ->
    [cold] 已经好了 { DURATION($sinceS) }：取出来滤掉茶叶，茶汤放回冰箱。滤好了吗？
   *[other] 第 { $brew-n } 泡该出汤后已过 { DURATION($sinceS) }。接着泡吗？
}
guide-waits = 不急，茶叶还没下水。好了跟我说一声。
guide-drink-after-rinse = 温杯的水和洗茶的水都倒掉，从第一泡开始喝。
guide-drink-first = 温杯的水倒掉，第一泡就可以喝。
guide-drink-this = 可以喝：从第一泡起都是喝的。
guide-paused = 慢慢来。沥干，盖子留一条缝；四小时内再接着泡。
guide-may-skip = 可以：轮到那一泡时说“跳过”，茶叶留给下一泡。
guide-skipped = 跳过了；茶叶留给下一泡。
guide-spent = 茶味已经泡尽了。
guide-whisk = 茶粉筛进温过的碗，加 { DEGREES($brew-waterC, $memory-unit) } 的水 { ML($brew-waterMl) }，来回快速刷到起细沫，约 { DURATION($brew-seconds) }。
guide-finish = 一共 { $count } 泡。喝完把叶底倒出来看看：叶片舒展就是泡开了。
guide-finish-cold = 放在冰箱里，5 °C 以下，一天之内喝完。茶叶已经泡尽，倒掉就好。
guide-finish-powder = 趁沫还在时喝。茶碗和茶筅用清水冲净，茶筅立着晾干。
guide-finish-early = 那今天先不泡。
guide-finished-already = 这一壶已经泡完了。
guide-care-clay = 壶只用热水冲，不用洗洁精，开盖晾干。
guide-care-pot = 茶具用热水冲净，开盖晾干。
guide-finish-bags = 泡好了：茶包泡一次就够了。请慢用。
guide-why-set-out = 为什么：茶叶一湿就不等人，所以先把东西备齐。
guide-why-warm = 为什么：茶具是冷的，第一泡就会降好几度，偏偏这时茶叶正要舒展。
guide-why-measure = 为什么：时间是按 { GRAMS($brew-leafG) } 配 { ML($brew-waterMl) } 算的；茶多了时间就要短。
guide-why-rinse = 为什么：洗茶让茶叶湿透舒展，第一泡才不薄，也冲掉茶末。
guide-rinse-stood = 那已经算一泡茶了，出了不少味：兑点热水喝掉，或倒掉都行。后面几泡会淡一点。
guide-rinse-may-skip = 也可以不洗：说一声“不洗茶”就好。
guide-why-infuse = 为什么是 { DURATION($brew-seconds) }：看茶叶还剩多少、前面泡得怎样来算，这样浓淡正好。
guide-why-hold = 为什么：时间从您按下算起；出汤，茶叶才停。
guide-why-whisk = 为什么：茶粉不溶，只是浮着；刷开才匀，有沫才柔。

# my tea
choice-my-tea = 我的茶
choice-my-vessels = 我的茶具
choice-my-vessel = { $item-called ->
    [none] { VESSEL($item-vessel) }
   *[other] { $item-called }
}，{ ML($item-volumeMl) }
choice-my-vessel-use = 用它泡
choice-my-vessel-name = 取个名字
choice-my-vessel-forget = 忘掉它
choice-my-brews = 我泡过的茶
choice-my-brew-again = 再泡{ $item-tea ->
    [none] { FAMILY($item-family) }
   *[other] { TEA($item-tea) }
}，{ VESSEL($item-vessel) } { ML($item-volumeMl) }
choice-my-taste-reset = { FAMILY($item) }恢复平常
    .typed = 恢复平常 / 恢复原来的 / 恢复原样 / 照平常 / 照原来的 / 照一般的 / 忘掉口味 / 忘掉这个 / 不用照我的口味 / 不要记住
my-nothing-yet = 您的茶我还没记下什么。
my-told-taste = { FAMILY($family) }：{ LIST($parts) }。
my-told-usual = 照平常
my-told-cooler = 水低 { $degrees } °C
my-told-hotter = 水高 { $degrees } °C
my-told-lighter = 淡 { PERCENT($share) }
my-told-stronger = 浓 { PERCENT($share) }
my-told-less-leaf = 茶叶少 { PERCENT($share) }
my-told-more-leaf = 茶叶多 { PERCENT($share) }
my-told-tea = { TEA($tea) }
my-told-family = { FAMILY($family) }
my-told-brew = { $name }，{ VESSEL($vessel) } { ML($volumeMl) }，{ $days ->
    [0] 今天
   *[other] { $days } 天前
}：{ DURATIONS($times) }{ $how }
my-told-was-untold = 。
my-told-was-right = ；刚好。
my-told-was-bitter = ；苦。
my-told-was-strong = ；浓。
my-told-was-dry = ；涩。
my-told-was-weak = ；淡。
my-told-was-flat = ；平。
my-told-was-sour = ；酸。
my-told-was-lost-scent = ；不香。
my-vessels-are = 茶具 { $count } 件。
my-brews-are = 最近泡过 { $count } 次。
my-keeps = 您平常的泡法：
my-told-keeps = { $name }，{ VESSEL($vessel) } { ML($volumeMl) }：{ GRAMS($leafG) }，{ DEGREES($waterC, $unit) }。
my-usual-gone = 取消了，那款茶之后重新计算。
choice-my-usual-drop = { $item-tea ->
    [none] { FAMILY($item-family) }
   *[other] { TEA($item-tea) }
}：取消平常泡法
my-taste-gone = 忘掉了：{ FAMILY($family) }恢复平常。
my-choose-vessel = 我记得这些。哪一件？
my-one-vessel = { $called ->
    [none] { VESSEL($vessel) }
   *[other] { $called } ({ VESSEL($vessel) })
}，{ ML($volumeMl) }
my-vessel-gone = 忘掉了。
my-ask-vessel-name = 您怎么叫它？我就按这个名字认得它。
my-vessel-named = 以后我就认得这个名字了。
my-no-vessels = 我没记下您的茶具。
my-no-brews = 没有记下泡过的茶。

# 架上的标签
label-sheet-title = 标签 · { $shop }
label-vessel = { VESSEL($vessel) }，{ ML($volumeMl) }
label-plan = { GRAMS($leafG) } · { DEGREES($waterC) }{ $rinseS ->
    [none] { "" }
   *[other] { " " }· 洗茶 { DURATION($rinseS) }
} · { $more ->
    [true] 前 { $shown } 泡 { DURATIONS($first) }
   *[false] { DURATIONS($first) }
}{ $count ->
    [one] ，泡一次
   *[other] { " " }· 共 { $count } 泡
}
label-scan = 扫码看完整泡法与注意事项
label-made = { $count } 张标签，共 { $pages } 页：{ $file }
label-print-as-is = 请按原尺寸（100 %）打印，不要缩放。
label-left-out-long = 没有印 { TEA($tea) }：{ $size } 的标签放不下“{ $text }”。
label-left-out-letters = 没有印 { TEA($tea) }：“{ $text }”里有字体没有的字。
label-origin-missing = 标签上的码会打开网页，请说网页在哪里：--origin https://tea.example.org，或设定 NINTHPOUR_ORIGIN。
label-origin-wrong = “{ $origin }”不是能印的网址。请写成 https://tea.example.org 这样，后面不带路径。
label-paper-unknown = 没有“{ $paper }”这种纸；有 { $allowed }。
label-size-unknown = { $paper } 没有“{ $size }”这个尺寸；有 { $allowed }。
label-bot-wrong = “{ $bot }”不是 Telegram 机器人的名字。
label-unwritable = 标签写不进 { $file }。请写一个已有文件夹里的文件名。

# core/lessons: what those who booked a lesson are told
lesson-told-head = “{ $title }”，{ WHEN($starts) }{ $place ->
    [none] { "" }
   *[other] ，{ $place }
 }
lesson-told-to-bring = { $bring ->
    [none] { "" }
   *[other] 需要带的：{ $bring }。
 }
lesson-told-your-seats = { $seats ->
    [1] { "" }
   *[other] 您有 { $seats } 个座位。
 }
lesson-told-week-before = 您报名的课快到了：{ lesson-told-head }。{ lesson-told-your-seats }{ lesson-told-to-bring }
lesson-told-evening-before = 您的课就要开始了：{ lesson-told-head }。{ lesson-told-your-seats }{ lesson-told-to-bring }您能来吗？
lesson-told-two-hours-before = 一会儿见：{ lesson-told-head }。{ lesson-told-your-seats }
lesson-told-thanks = 谢谢您来上“{ $title }”。想在家泡课上的哪款茶？
lesson-told-thanks-only = 谢谢您来上“{ $title }”。
lesson-told-offer = { $seats ->
    [1] 有一个座位空出来了：{ lesson-told-head }。为您保留到 { WHEN($until) }。
   *[other] 有 { $seats } 个座位空出来了：{ lesson-told-head }。为您保留到 { WHEN($until) }。
 }
lesson-told-lapsed = 保留的时间过了，座位已经轮到下一位：{ lesson-told-head }。您可以再排一次。
lesson-told-moved = 您的课改时间了。原来是 { WHEN($was) }，现在是{ lesson-told-head }。新时间要是不方便，您可以退掉座位。
lesson-told-lasts = 您的课改为 { NUMBER($minutes) } 分钟：{ lesson-told-head }。不方便的话，可以把座位退回来。
lesson-told-cancelled = 这节课取消了：{ lesson-told-head }。很抱歉。
lesson-told-cancelled-because = 这节课取消了：{ lesson-told-head }。店家说：{ $reason }
lesson-told-changed = 您的课有些变动，现在是：{ lesson-told-head }{ $teacher ->
    [none] { "" }
   *[other] ，由 { $teacher } 授课
 }。{ lesson-told-to-bring }
lesson-told-recomputed = 当地的时制变了。您的课在店里的时间不变：{ lesson-told-head }。这样您的日历就对了。
lesson-told-written = 店家关于“{ $title }”（{ WHEN($starts) }）的消息：{ $text }
lesson-told-resumed = { $standing ->
    [waiting] 这节课还是会上：{ lesson-told-head }。您仍在候补名单上，顺位不变。
   *[seated] 这节课还是会上：{ lesson-told-head }。您的 { $seats } 个座位仍为您留着；若那天已经不方便，可以退掉。
 }
lesson-told-written-to-all = 店家写给所有报名的人：{ $text }
lesson-told-nameless = 没有留名
choice-lesson-coming = 我会来
choice-lesson-absent = 我不能来
choice-lesson-accept = 我要这个座位
choice-lesson-decline = 让给别人
choice-lesson-brew = 泡{ TEA($tea) }

# flows/lesson.yaml and core/functions: lessons as students see them
lesson-list = 接下来有这些课：
lesson-more = 后面还有 { $count } 节。
lesson-none = 目前没有安排课。过一阵再问，或者告诉店家您想学什么。
lesson-past-then = 那天已经过了。
lesson-one-by-one = 一节一节来：先选一节，报好了再选下一节。
lesson-none-such = 没有这样的课。
lesson-none-on = { $weekday ->
    [1] 周一没有课。
    [2] 周二没有课。
    [3] 周三没有课。
    [4] 周四没有课。
    [5] 周五没有课。
    [6] 周六没有课。
   *[7] 周日没有课。
 }
lesson-which = 是哪一节呢？
lesson-detail-which = 每节不一样：选一节，我把详情告诉您。
lesson-costs = “{ $title }”：{ $price }。
lesson-none-then = 那天没有课。
lesson-told-elsewhen = { $moves ->
    [0] “{ $title }”不在那天，而是{ WHEN($starts) }。
   *[other] “{ $title }”已改到{ WHEN($starts) }。
 }
lesson-of-level = { $level ->
    [advanced] 适合已经懂不少的人：
    [intermediate] 适合已经入门的人：
   *[beginner] 这些不需要基础。
 }
lesson-glad = 听您这么说真好。
lesson-glad-teas = 听您这么说真好。课上的茶，在家也可以泡。
lesson-told-brewed = “{ $title }”上泡的是{ LIST($teas) }。
lesson-no-teas = 那节课泡了什么茶，这里没有记。店家知道，请说“找店家”。
lesson-which-tea = 想泡哪一款？
lesson-missed = 没关系。这节课还会再上：
lesson-missed-not-yet = 没关系。这节课还没有安排下一次。
lesson-once-more = 这节课还会再上：
lesson-once-more-not-yet = 这节课还没有安排下一次。
choice-lesson-wish = 告诉店家我想学什么
lesson-which-for = { $count } 位，记着了。要报哪一节？
lesson-bring-along = 可以，只要还有座位：报名的时候一起报就行。要报哪一节？
lesson-heard-nothing = 我查到您的报名了，没有问题。上课前一周、前一晚和两小时前会发消息给您，夜里不发；报名时已经过了的，就不再补发。
lesson-not-booked-here = 这个对话里没有您的报名。如果您是在店里、打电话或在别的对话里报的，店家的名单上会有。要我把您写的转给店家，请他们查一下吗？
lesson-mail = 只有店家记下邮箱的人才会收到邮件。要我把您写的转给店家，请他们记下吗？
lesson-how-waits = 课满了可以候补：一有空位，就先问名单上的第一位，为他保留一段时间，再问下一位；会在这里通知您。
lesson-reminders-off = { $which ->
    [two-hours-before] 好，上课当天不再提醒您，一周前和前一晚照旧。
    [evening-before] 好，上课前一晚不再提醒您，一周前和上课前两小时照旧。
    [week-before] 好，一周前不再提醒您，前一晚和上课前两小时照旧。
   *[off] 好，以后不再提醒您上课。
  }课改期或停开还是会告诉您。说“打开提醒”就能恢复。
lesson-reminders-on = 提醒又打开了。
lesson-reminders-are-off = 您关掉了{ $which ->
    [two-hours-before] 上课当天的
    [evening-before] 上课前一晚的
    [week-before] 一周前的
   *[off] {""}
  }提醒。说“打开提醒”就能恢复。
lesson-late = 您报的是{ $what }。能不能晚到要由店家决定：要我把您写的转给店家，让他们知道吗？
lesson-refund = 能不能退费要问店家：把您写的转给店家吗？
lesson-late-unbooked = 能不能晚到要由店家决定。要我把您写的转过去吗？
lesson-reminds = 报了名的课我都会提醒您：一周前、前一晚、上课前两小时，半夜不打扰您。
lesson-how-many = 一共几位？
lesson-ask-name = 门口的名单上写什么名字？
mistake-name-too-long = 这比名字长了。请写在 { $most } 个字以内。
mistake-name-without-letters = 名字总得有字。
lesson-named = 记下了：{ $name }。
lesson-nothing-booked = 您目前没有报名。
lesson-mine = 您报名了：
lesson-past = 您上过：
lesson-give-back = 要退掉吗？{ $what }
lesson-swap-stays = 您原来的座位不变。
lesson-swap-which = 您指的是哪一个预约？
lesson-move-to-which = 要把{ $what }改到哪一节？
lesson-told-swap = 退掉{ $was }，改上这节：{ lesson-told-head }，{ lesson-told-seats }，好吗？
lesson-told-swap-full = 那节的座位不够，您原来的座位不变：{ $was }。
lesson-told-swapped = 改好了，{ lesson-told-seats }：{ lesson-told-head }。{ $was }的座位已退；日历里如果有，请自行删去。新的这节 { WHEN($until) } 以前可以退。
choice-lesson-swap = 好，改过去
    .typed = 改 / 改吧 / 麻烦改
lesson-kept-seat = 那就给您留着。
lesson-subject = { $what ->
    [offer] 有空位了
    [lapsed] 座位让给下一位了
    [lasts] 时长有变
    [moved] 改时间了
    [cancelled] 这节课不上了
    [cancelled-because] 这节课不上了
    [changed] 课程有变动
    [recomputed] 请核对日历
    [did-leave] 退掉了
    [taken-off] 退掉了
    [resumed] 照常上课
    [put-back] 您的座位
    [written] 店里的话
    [reseated-by-shop] 您的座位
    [transferred] 换到另一节课
    [written-to-one] 店家的话
    [written-down] 您的座位
    [written-down-waiting] 候补名单
    [thanks] 谢谢您来上课
    [thanks-only] 谢谢您来上课
   *[other] 上课提醒
 }：“{ $title }”，{ WHEN($starts) }
lesson-subject-all = 店里的话
lesson-when = { WHEN($starts) }
lesson-told-line = { $n }. { lesson-told-head }：{ lesson-told-state-short }
lesson-told-state-short = { $state ->
    [seated] 您有 { $seats } 个座位
    [waiting] 您在候补名单上
    [offered] 给您留着座位
    [full] 已满，{ $waiting } 位候补
   *[free] 还有 { $free } 个座位
 }
lesson-told-one = { lesson-told-head }。{ $minutes } 分钟{ $teacher ->
    [none] { "" }
   *[other] ，由 { $teacher } 授课
 }，{ $level ->
    [advanced] 适合已经懂不少的人
    [intermediate] 适合有些基础的人
   *[beginner] 不需要基础
 }{ $after ->
    [none] { "" }
   *[other] ，接在“{ $after }”之后
 }。{ $price ->
    [none] { "" }
   *[other] { $price }。
 }{ lesson-told-to-bring }
lesson-told-teas = 课上会泡：{ LIST($teas) }。
lesson-told-state = { $state ->
    [seated] 您有 { $seats } 个座位，{ WHEN($until) } 以前可以退。
    [waiting] 您在候补名单上排第 { $number } 位，想要 { $seats } 个座位。
    [offered] 给您留 { $seats } 个座位到 { WHEN($until) }。
    [full] 已经满了，{ $waiting ->
        [0] 还没有人候补
       *[other] { $waiting } 位候补
     }。
   *[free] 还有 { $free } 个座位。
 }
lesson-told-enrolled = 报好了，{ $seats } 个座位：{ lesson-told-head }。上课前我会提醒您。{ WHEN($until) } 以前可以退。
lesson-told-listed = 您排进候补名单了：{ lesson-told-head }。一有 { $seats } 个空位，我就告诉您。
lesson-told-full = { $free ->
    [0] “{ $title }”，{ WHEN($starts) }，已经满了，{ $waiting ->
        [0] 还没有人候补
       *[other] { $waiting } 位候补
     }。
   *[other] 只剩 { $free } 个座位：{ lesson-told-head }。
 }要给您排候补吗？
lesson-told-did-coming = 好，到时候见：{ lesson-told-head }。
lesson-told-did-absent = 谢谢您告诉我们。您的 { $seats } 个座位让给别人了：{ lesson-told-head }。
lesson-told-did-accept = { $seats ->
    [1] 座位是您的了
   *[other] { $seats } 个座位是您的了
 }：{ lesson-told-head }。上课前我会提醒您。
lesson-told-did-decline = 座位轮到下一位了：{ lesson-told-head }。
lesson-told-seats-same = 您已经有 { $seats } 个座位了：{ lesson-told-head }。
lesson-told-reseat = { lesson-told-head }：{ $state ->
    [waiting] 候补的座位从 { $was } 个改成 { $seats } 个，好吗？
   *[seated] 座位从 { $was } 个改成 { $seats } 个，好吗？
 }
lesson-told-reseated = 改好了，{ $state ->
    [waiting] 您现在候补 { $seats } 个座位
   *[seated] 您现在有 { $seats } 个座位
 }：{ lesson-told-head }。
lesson-told-did-leave = 退掉了：{ lesson-told-head }。
lesson-told-taken-off = 店里已把您从名单上拿掉：{ lesson-told-head }。如果您还是想来，或是弄错了，写在这里就行。
lesson-told-reseated-by-shop = 店里已把您的座位从 { $was } 个改成 { $seats } 个：{ lesson-told-head }。如果不对，写在这里就行。
lesson-told-transferred = 店里已把您换到另一节课：{ lesson-told-head }。{ lesson-told-your-seats }原来的{ $was }不用来了，日历里如果有，请自行删去。如果不对，写在这里就行。
lesson-told-written-to-one = 店里写给您，关于“{ $title }”（{ WHEN($starts) }）：{ $text }
lesson-told-put-back = { $standing ->
    [waiting] 店里已把您放回候补名单，还是原来的顺序：{ lesson-told-head }。
   *[seated] 店里已把您放回名单：{ lesson-told-head }。{ lesson-told-your-seats }
 }
lesson-told-mine = { $n }. { lesson-told-head }：{ $state ->
    [cancelled] 取消了
    [waiting] 候补第 { $number } 位
    [offered] 给您留着座位
    [coming] { lesson-told-seats }，您会来
   *[seated] { lesson-told-seats }
 }
lesson-told-seats = { $seats } 个座位
lesson-told-was = “{ $title }”，{ WHEN($starts) }
mistake-no-such-lesson = 这节课已经不在名单上了。
mistake-gone-lesson = { $why ->
    [cancelled] { WHEN($starts) }的“{ $title }”已经取消了。
    [over] { WHEN($starts) }的“{ $title }”已经上完了。
   *[begun] { WHEN($starts) }的“{ $title }”已经开始了。
 }
mistake-no-such-booking = 找不到您的这个报名。
choice-lesson-see = { $title }，{ WHEN($starts, style: "short") }
choice-lesson-later = 后面的
    .typed = 更多
choice-lesson-list = 课程
    .typed = 有什么课 / 有哪些课 / 上课
choice-lesson-mine = 我的课
    .typed = 我的报名 / 我报了什么课
choice-lesson-enrol = 报名
    .typed = 我要报名 / 好，报名
choice-lesson-wait = 给我排候补
    .typed = 候补
choice-lesson-seats = { $count }
choice-lesson-leave = 退掉
    .typed = 取消 / 取消报名
choice-lesson-give-back = 对，退掉
    .typed = 退 / 退了 / 退吧 / 退了吧 / 退掉 / 退掉吧 / 确定 / 确定退 / 确认 / 退 吧 / 都退了吧
choice-lesson-keep = 不，留着
    .typed = 留着 / 先留着 / 那先留着 / 那就留着 / 那还是留着 / 还是留着 / 留着吧 / 先不退 / 不退 / 不退了 / 别退
choice-lesson-reseat = 好，改吧
    .typed = 改 / 改吧 / 就这样改 / 可以改
choice-lesson-leave-so = 不，照旧
choice-lesson-nameless = 不留名
choice-lesson-done = 就这样

# flows/lesson-desk.yaml 与 core/functions/desk-*：店主看到的课程
choice-lesson-desk = 课程管理
    .typed = 排课 / 管理课程
desk-lessons = 已排的课程：
desk-which = 是哪一节课？
desk-none = 还没有排课。直接写一句话，或点“加一节课”。
desk-told-line = { $n }. “{ $title }”{ WHEN($starts) }，{ desk-told-taken }
desk-told-taken = { $seats } 个座位已订 { $taken } 个{ $waiting ->
    [0] { "" }
   *[other] ，候补 { $waiting } 个
 }
desk-undelivered-hint = 有些消息没能送到。
choice-desk-lesson = { $n }. { $title }
choice-desk-later = 更后面的
choice-desk-add = 加一节课
    .typed = 加课 / 新增课程 / 加一堂课
choice-desk-today = 今天
    .typed = 今天的名单 / 今天谁来
choice-desk-asked = 大家问什么茶
    .typed = 大家问什么
choice-desk-undelivered = 没送到的消息
choice-desk-code = 给同事的代码
desk-what-next = 接下来呢？
choice-desk-done = 好了
choice-desk-back = 回课程表
choice-desk-this = 回这节课
choice-desk-steps = 一步一步来
choice-desk-drop = 不要了
    .typed = 算了 / 取消 / 不排了 / 先不用
choice-desk-leave = 先不用
    .typed = 先不要 / 算了 / 不用了 / 先不用了 / 不取消了 / 保留 / 不要 / 不 / 不了 / 不取消 / 先不 / 还是不要 / 不用
desk-still-planning = 这里正在排一节新课。不排了请说“不要了”。
desk-not-put-yet = 还没排进课程表。
choice-desk-put = 排进课程表
    .typed = 好 / 要 / 可以 / 放上去 / 排进去 / 排吧 / 发布 / 加进去 / 排上去 / 上架 / 就这样 / 没问题 / 可以了 / 好，排吧
choice-desk-again = 再改一次
choice-desk-found-tick = { $mark ->
    [here] 到了：{ $n }
   *[away] 没来：{ $n }
}
choice-desk-list = 再看一次名单
choice-desk-people = 谁会来
    .typed = 谁会来 / 名单
choice-desk-guest = 加一位没有聊天的客人
choice-desk-move = 改时间
    .typed = 改时间 / 改期
choice-desk-alter = 改别的
choice-desk-repeat = 定期开课
    .typed = 重复
choice-desk-write = 写给所有会来的人
choice-desk-cancel = 取消这节课
choice-desk-tick = { $mark ->
    [here] 到了：{ $n }
    [away] 没来：{ $n }
   *[back] 收回：{ $n }
}
choice-desk-release = 退位：{ $n }
choice-desk-release-yes = 好，退掉
    .typed = 好 / 是
choice-desk-undo = 放回名单
    .typed = 撤销 / 恢复 / 取消刚才的 / 放回去 / 弄错了 / 搞错了
choice-desk-guest-yes = 好，记下来
    .typed = 好 / 记下来 / 记下来吧 / 记下 / 记吧 / 记
choice-desk-move-yes = 好，改过去
    .typed = 好
choice-desk-no-reason = 不说原因
choice-desk-off-yes = 对，全部取消
    .typed = 对 / 好 / 好的 / 是 / 是的 / 取消 / 全部取消 / 可以
choice-desk-off-why = 写上原因
    .typed = 写上原因 / 写原因 / 加上原因
choice-desk-off-only = 只有“{ $title }”
choice-desk-cancel-yes = 好，取消
    .typed = 好
choice-desk-write-yes = 好，发出
    .typed = 好 / 发 / 发出 / 送出 / 发吧 / 发送
choice-desk-door = 点名
    .typed = 点名 / 补点名
choice-desk-alter-yes = 好，改
    .typed = 好 / 改 / 改吧 / 对
choice-desk-resume = 还是照常上课
    .typed = 复原 / 撤销 / 还原 / 照常上课 / 放回去 / 弄错了 / 搞错了 / 取消错了
choice-desk-resume-yes = 对，恢复
    .typed = 对 / 好 / 好的 / 是 / 是的 / 恢复 / 全部恢复 / 可以
choice-desk-resume-only = 只有 { $n }
choice-desk-resume-one = 恢复 { $n }
choice-desk-write-only = 只给 { $n } 的人
choice-desk-every-week = 每周
choice-desk-every-other-week = 隔周
choice-desk-every-month = 每月
choice-desk-seen = 我看过了
choice-desk-change = { desk-told-field }
desk-told-field = { $field ->
    [starts] 日期和时间
    [minutes] 多久
    [seats] 座位
    [title] 名称
    [level] 程度
    [place] 地点
    [teacher] 老师
    [price] 费用
   *[bring] 要带什么
 }
desk-add = 用一句话说，比如：周六晚上七点，白茶，八个座位。写“每周六”就会定期开课。
desk-ask-field = { $field ->
    [starts] 哪一天，几点？
    [minutes] 要上几分钟？
    [seats] 有几个座位？
    [title] 叫什么名字？
    [level] 给初学、有些基础，还是进阶的人？
    [place] 在哪里？
    [teacher] 谁授课？
    [price] 费用多少，在哪里付？
   *[bring] 要请大家带什么？
 }
desk-planned = 我是这样理解的。要排进课程表吗？
desk-planned-series = 我是这样理解的。要全部排进课程表吗？
desk-told-level = { $level ->
    [advanced] 进阶
    [intermediate] 有些基础的人
   *[beginner] 初学
 }
desk-told-draft = “{ $title }”{ WHEN($starts) }{ $year ->
    [none] { "" }
   *[other] （{ $year } 年）
 }，{ $minutes } 分钟，{ $seats } 个座位，{ desk-told-level }{ $place ->
    [none] { "" }
   *[other] ，{ $place }
 }{ $teacher ->
    [none] { "" }
   *[other] ，{ $teacher }授课
 }。{ $price ->
    [none] { "" }
   *[other] { $price }。
 }{ $bring ->
    [none] { "" }
   *[other] 请带：{ $bring }。
 }{ $tea ->
    [none] { "" }
   *[other] 会泡{ TEA($tea) }。
 }
desk-told-repeats = { $every ->
    [day] { $step ->
        [1] 每天
       *[other] 每 { $step } 天
     }
    [month] { $step ->
        [1] 每月
       *[other] 每 { $step } 个月
     }{ $by ->
        [date] { $day }日
       *[weekday] { $nth ->
            [1] 第一个
            [2] 第二个
            [3] 第三个
            [4] 第四个
           *[other] 最后一个
         }{ desk-told-weekday }
     }
   *[week] { $step ->
        [1] 每周
        [2] 隔周
       *[other] 每 { $step } 周
     }
 }{ $times ->
    [0] { $until ->
        [none] ，一直开下去
       *[other] ，到{ DAY($until) }为止
     }
   *[other] ，共 { $times } 次{ $until ->
        [none] { "" }
       *[other] ，最晚到{ DAY($until) }
     }
 }。
desk-told-weekday = { $weekday ->
    [1] 周一
    [2] 周二
    [3] 周三
    [4] 周四
    [5] 周五
    [6] 周六
   *[other] 周日
 }
desk-told-date = { DAY($starts) }
desk-told-dates = 也就是 { LIST($dates) }{ $more ->
    [0] 。
    [open] ，依此类推。
   *[other] ，还有 { $more } 次。
 }
desk-told-again = “{ $title }”会再开，第一次是 { WHEN($starts) }。
desk-put = 排好了。
desk-put-series = 都排好了。十周以后的（如果有），时间近了会自动出现在课程表上。
desk-told-lesson = “{ $title }”{ WHEN($starts) }，{ $minutes } 分钟，{ desk-told-level }{ $place ->
    [none] { "" }
   *[other] ，{ $place }
 }{ $teacher ->
    [none] { "" }
   *[other] ，{ $teacher }授课
 }。{ desk-told-taken }。
desk-told-off = 这节课已取消。{ $reason ->
    [none] { "" }
   *[other] 您写的是：{ $reason }
 }
desk-people = “{ $title }”的名单：
desk-nobody = “{ $title }”还没有人预订。
desk-told-more = 名单上还有 { $count } 位。
desk-told-person = { $n }. { $name }，{ $seats } 位{ $state ->
    [coming] ，说会来
    [here] ，到了
    [away] ，没来
    [waiting] ，候补中
    [offered] ，座位给他留着
   *[booked] { "" }
 }
desk-told-person-untold = { desk-told-person }（没办法提醒）
desk-tick = 人到了就点号码。已经到的，按钮会换成“没来”，可以更正。
desk-attended-never = 最近几周没有上过课。
desk-attended-none = 那时候没有上课。
desk-told-attended = “{ $title }”{ WHEN($starts) }：{ $booked ->
    [0] 没有人订位。
   *[other] 到 { $here } 位，没来 { $away } 位{ $unsaid ->
        [0] 。
       *[other] ，没点到 { $unsaid } 位。
     }
 }
desk-told-attended-line = { $n }. { $name }，{ $seats } 位：{ desk-told-came }
desk-told-came = { $state ->
    [here] 到了
    [away] 没来
   *[unsaid] 没点到
 }
desk-told-attended-one = { $name }，“{ $title }”{ WHEN($starts) }：{ desk-told-came }。
desk-told-ticked = { $n }. { $name }：{ $mark ->
    [here] 到了。
    [away] 没来。
   *[back] 已收回。
}
desk-ask-guest = 把姓名、邮箱和座位写在一行，比如：林美，mei@example.org，2。没有邮箱的，写名字就行。
desk-ask-guest-name = 把姓名和座位写在一行，比如：林美，2。这里还不能发邮件，有变动请您自己告诉对方。
desk-told-no-phone = 这里不记电话号码，请您自己留着。
desk-told-guest-untold = { $name }在“{ $title }”（{ WHEN($starts) }）有 { $count } 个座位。没有邮箱，就没办法提醒，课有变动也通知不到，要请您自己说。要记下来吗？
desk-told-guest-seated = { $name }在“{ $title }”（{ WHEN($starts) }）有 { $count } 个座位，并会发邮件到 { $mail }。要记下来吗？
desk-told-guest-waiting = “{ $title }”没有那么多空位。{ $name }会排候补，并发邮件到 { $mail }。要记下来吗？
desk-who = 说的是哪一位？请写名字。
desk-found-none = 名单上找不到叫这个名字的人。
desk-found-one = 名单上有：
desk-found-some = 不止一位符合：
desk-found-which = 不止一位符合，是哪一位？
desk-told-found = { $n }. { $name }：“{ $title }”{ WHEN($starts) }，{ $seats } 个座位{ $state ->
    [coming] ，会来
    [here] ，到了
    [away] ，没来
    [waiting] ，在候补名单上
    [offered] ，有座位留着
   *[booked] { "" }
}{ $reach ->
    [none] ，无法提醒
   *[other] { "" }
}
desk-told-release = { $name }退掉“{ $title }”（{ WHEN($starts) }）的{ $standing ->
    [waiting] 候补
   *[other] {" "}{ $count } 个座位
 }{ $reach ->
    [mail] ，并会收到一封邮件
    [chat] ，对方会在对话里收到通知
   *[other] { "" }
 }。要退吗？
desk-released = 退掉了；有空位就会问候补的人。
desk-put-back = 放回名单了；通知得到的话，也会告诉对方。
desk-gone-on = 那个位子已经给了候补的人，这里没办法撤回。
desk-told-they-hear = { $reach ->
    [mail] 对方会收到一封邮件
    [chat] 对方会在对话里收到通知
   *[other] 通知不到对方，请您亲自告诉
 }
desk-told-reseat = { $name }在“{ $title }”（{ WHEN($starts) }）从 { $was } 个座位改成 { $seats } 个；{ desk-told-they-hear }。要改吗？
desk-told-ask-seats = { $name }一共要几个座位？现在是 { $was } 个：“{ $title }”，{ WHEN($starts) }。
desk-told-seats-same = { $name }本来就是 { $was } 个座位：“{ $title }”，{ WHEN($starts) }。要改成几个？
desk-told-transfer = { $name }退掉{ $was }，改上“{ $title }”（{ WHEN($starts) }），{ $count } 个座位；{ desk-told-they-hear }。要改吗？
desk-told-ask-lesson = 要把{ $name }换到哪一节？请写日子或课名。现在是“{ $title }”，{ WHEN($starts) }。
desk-told-none-there = 那时没有别的课。要把{ $name }换到哪一节？请写日子或课名。
desk-told-ask-note = 要写什么给{ $name }？会一字不改地发出，只给这一位。
desk-told-note = 只给{ $name }：“{ $text }”。{ $reach ->
    [mail] 会发邮件过去
   *[other] 会发到对方的对话里
 }。要发吗？
desk-guest-changed = 改好了。
desk-nothing-to-undo = 这里没有可以撤销的。
mistake-lesson-guest-there = 这位在那节已经有预订了。
mistake-lesson-guest-no-room = “{ $title }”（{ WHEN($starts) }）一共 { $most } 个座位，还空 { $free } 个，{ $name }没办法有 { $seats } 个。要加座位，请选“改别的”。
mistake-lesson-guest-untold = 消息发不到{ $name }：没有留地址，或是对方不再收消息。请您亲自告诉。
choice-desk-found-this = { $n }
choice-desk-guest-seats = 改座位
choice-desk-guest-other = 换到别节
choice-desk-guest-write = 写给这位
choice-desk-guest-other-yes = 好，换过去
    .typed = 好 / 改 / 改吧 / 对 / 换
choice-desk-reverse = 撤销
    .typed = 恢复 / 取消刚才的 / 弄错了 / 搞错了 / 改回来 / 改回去 / 换回来
desk-guest-down = 记下来了，通知邮件正在发送。
desk-guest-down-untold = 记下来了。名单上会注明这位没办法提醒。
desk-ask-move = 改到什么时候？只说日子，时间不变；只说几点，日子不变。
desk-told-move = “{ $title }”从 { WHEN($was) } 改到 { WHEN($starts) }。{ desk-told-reach }要改吗？
desk-told-lasts = “{ $title }”（{ WHEN($starts) }）改为 { NUMBER($minutes) } 分钟。{ desk-told-reach }要改吗？
desk-told-reach = { $reached ->
    [0] { $unreached ->
        [0] 还没有人预订。
       *[other] 有 { $unreached } 个预订，这里都通知不到，请您自己告诉他们。
     }
   *[other] 会通知 { $reached } 个预订。{ desk-told-unreached }
 }
desk-told-unreached = { $unreached ->
    [0] { "" }
   *[other] 另有 { $unreached } 个这里通知不到，请您自己告诉他们。
 }
desk-moved = 改好了，正在通知预订的人。
desk-moved-some = 改好了。通知不到的人列在“没送到的消息”里，请您自己告诉他们。
desk-ask-reason = 为什么？您写的话会一字不改地传给所有预订的人。
desk-told-cancel = “{ $title }”{ WHEN($starts) } 就不上了。{ desk-told-reach }要取消吗？
desk-cancelled = 取消了，正在通知预订的人。
desk-cancelled-some = 取消了。通知不到的人列在“没送到的消息”里，请您自己告诉他们。
desk-off-which = 要结束哪一个系列？
desk-off-none = 课程表上没有系列课。
desk-off-nothing = 那些日子没有课，不用取消。
desk-off-later = 这些课还没排进课程表，之后也不会排进去。
desk-off-changed = 其中一节刚才有了变动。现在是这样：
desk-off-sure = { $count ->
    [1] 这一节课就不开了。要取消吗？
   *[other] 这 { $count } 节课就不开了。要全部取消吗？
 }
desk-told-off-more = 还有 { $more } 节。
desk-told-series-ends = “{ $title }”到此为止：{ DAY($starts) }之后不再排课。
desk-told-series-skips = “{ $title }”还没排进课程表的这几天也会跳过：{ LIST($dates) }。
desk-told-off-people = { desk-told-reach }{ $people ->
    [0] { "" }
   *[other] 共 { $people } 位，每节课各通知一次。
 }
desk-told-off-reason = 附上原因，一字不改：“{ $reason }”
desk-off-put = 已取消，正在通知每一位预订的人。
desk-off-put-quietly = 已取消，没有人预订。
desk-off-put-some = 已取消。消息到不了的人列在“没送到的消息”里，请您自己告诉他们。
desk-off-put-later = 好了，这些课不会再排进课程表。
desk-resume-sure = { $count ->
    [0] 那些课还没排进课程表。要恢复吗？
    [1] 这一节课会照常上。要恢复吗？
   *[other] 这 { $count } 节课会照常上。要全部恢复吗？
 }
desk-resume-seats = 座位照原来的；不能再来的人可以退。
desk-told-series-back = “{ $title }”照原来的排下去。
desk-resume-none = 接下来的课没有停开的。
desk-resumed = 恢复了，正在通知每一位订位的人。
desk-resumed-some = 恢复了。消息发不到的人列在“没送到的消息”里，请您自己告诉他们。
desk-resumed-quietly = 恢复了。
desk-off-listed = 停开的课：
desk-ask-alter = 要改哪一项？
desk-told-alter = “{ $title }”{ WHEN($starts) }，{ desk-told-field }：{ $words }。{ desk-told-reach }要改吗？
desk-reminds = 有座位的人都会自动收到提醒：一周前、前一晚、上课前两小时，半夜不打扰。别的事请写给他们。
desk-told-altered = 改好了：“{ $title }”{ WHEN($starts) }，{ desk-told-field }：{ $words }。跟预订的人有关的，会通知他们。
desk-ask-repeat = 多久一次？
desk-ask-write = 要告诉他们什么？会一字不改地发出。
desk-write-sure = { $reached ->
    [0] “{ $title }”（{ WHEN($starts) }）：“{ $text }”从这里谁也发不到。
   *[other] “{ $title }”（{ WHEN($starts) }）：“{ $text }”会发给 { $reached } 个预订。
 }{ desk-told-unreached }要发出吗？
desk-untold = 通知不到的有：{ LIST($names) }。
desk-told-name = { $name }
desk-write-nobody = 还没有人订位，没有对象可以通知。
desk-write-all-sure = { $reached ->
    [0] “{ $text }”从这里谁也发不到。
   *[other] “{ $text }”会发给 { $reached } 位{ $count ->
        [1] 。
       *[other] （{ $count } 节课，每人一次）。
     }
 }{ desk-told-unreached }要发出吗？
desk-written = 正在发送。
desk-written-some = 发得到的，正在发送。其他人列在“没送到的消息”里，请您自己告诉他们。
desk-nothing-today = 今天没有课。
desk-told-next = 下一节：“{ $title }”{ WHEN($starts) }，{ desk-told-taken }
desk-none-then = 那天没有课。
desk-no-stock = 我不记库存：有人问有没有货，我会说不知道，并把问题转给您。新到的茶，或要改冲泡的茶，请写进店里的文件，下次启动就认得。
desk-swaps-singly = 课要一节一节改，每节都会通知预订的人。例如先说“把12号的第一杯茶改到19号下午三点”，再说另一节。
desk-hours-stay = 客人问营业时间，听到的还是原来的：那写在店里自己的回复文件里。
desk-told-day = 今天：“{ $title }”{ WHEN($starts) }，{ desk-told-taken }
desk-told-morning = 早上好。今天的安排：
desk-told-waiting = 有 { $count } 个问题等着回答。
desk-nothing-asked = 最近 30 天没有人问茶。
desk-asked = 最近 30 天问得最多的：
desk-bitter = 有人说“太苦”的：
desk-told-tally = { $n }. { TEA($tea) }：{ $count } 次
desk-all-delivered = 就目前所知，全都送到了。
desk-no-notes = 我不记客人的备注，只留他们自己告诉我的；请写在您自己的本子上。
desk-undelivered = 这些消息没能送到：
desk-told-undelivered = { $name }，{ WHEN($at) }：{ $why ->
    [address] 邮箱地址不对
    [could-not-be-reached] 联系不上
    [no-address] 没有留下地址；请亲自告诉他们
    [no-words] 消息的文字出了错；请看看对方在等什么
    [restored] 恢复备份后没有再发
    [too-late] 送到也太晚了
   *[other] 对方的渠道不收
 }
desk-told-undelivered-about = { desk-told-undelivered }（{ $about }）
desk-seen = 收起来了。
desk-code = 这组代码能让一位同事成为店主，只能用一次，十分钟内有效。请对方在自己的聊天里写：
    { $code }
desk-code-told = 代码已经给了。再要一组，旧的就作废。
lesson-told-written-down = 店里已为您留位：{ lesson-told-head }。{ lesson-told-your-seats }{ lesson-told-to-bring }
lesson-told-written-down-waiting = 店里已把您排进候补：{ lesson-told-head }。有空位时会发邮件给您。
mistake-lesson-no-mail = 还不能发邮件：请管理这里的人先设置邮件服务器。
mistake-lesson-guest-no-mail = 还不能发邮件：请管理这里的人先设置邮件服务器。在那之前，请只写名字，不写地址。
mistake-lesson-guest-mail = “{ $words }”不是邮箱地址。没有地址的，写名字就行。
mistake-lesson-guest-no-name = 这一行里找不到名字。
mistake-lesson-guest-name-long = 名字最多 { $most } 个字。
mistake-lesson-guest-waits-untold = { $free ->
    [0] 已经没有座位了
   *[other] 只剩 { $free } 个座位
 }；候补要有邮箱，有空位才通知得到。
mistake-lesson-words-too-long = 请在 { $most } 个字以内说完。
mistake-lesson-repeats-unclear = 要多久重复一次？例如“每月”“隔周一次，共六次”“每月第一个周六”。
mistake-lesson-not-said = 这里没听懂。要排课请说日子和时间，或从下面选。
mistake-lesson-repeats-already = 这节课已经是定期课程了。
