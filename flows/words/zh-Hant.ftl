# the page
page-title = 泡茶小箋
page-sheet = 來往的話
page-language = 語言
page-you-wrote = 您寫道：
page-write-label = 下一行
page-write-hint = 茶、器皿、容量
page-write-on = 也可以自己寫
page-write = 寫下
page-write-full = 一行最多寫到這裡，貼上的內容可能沒有全部放進來。
page-choices = 請選
page-opening = 正在鋪開小箋……
page-lost = 暫時連不上。您寫的會先留著，連上後自動送出。
page-waiting = 等候送出
page-refused = 未能送出，請再寫一次
page-left = 還有
page-pour-now = 出湯
page-ready-at = 叫您的時間
page-since = 已過
page-sound = 該出湯時響一聲、震一下
page-sound-wake = 請先輕觸一下小箋，聲音才能響。
page-print = 印成茶卡
page-fresh = 為下一位換一張新箋
page-fresh-confirm = 從這台裝置清除這張
page-telegram = 到 Telegram 繼續
page-my-data = 存有我的什麼
page-elsewhere = 在另一台裝置上看這張小箋
page-elsewhere-show = 顯示一組號碼給另一台裝置
page-elsewhere-how = 在另一台裝置打開本頁，把號碼填在頁尾。五分鐘內有效，只能用一次。
page-elsewhere-type = 另一台裝置上的號碼
page-elsewhere-join = 在這裡打開那張小箋
page-elsewhere-wrong = 這組號碼打不開小箋，可能用過了或過了時效，請在那邊再取一組。
page-elsewhere-slow = 試得太多次了，請等一分鐘。
page-from-label = 茶標上的沖泡法
page-no-script = 要在這裡書寫，請允許本頁執行程式。
page-no-cookie = 本頁要用一個 cookie 認得您的小箋，請允許後重新打開本頁。
page-not-found = 這裡沒有這一張，茶標或連結可能是舊的。
page-failed = 我們這邊出了點問題，請稍後再試。
page-too-fast = 有點太快了，請等幾秒再試。
page-back = 回到小箋
page-earlier = 更早的話這裡不再顯示；留存的全部內容在頁尾的「存有我的什麼」裡。
page-file-gone = 這個檔案已不在這裡了，請在小箋上再要一次。

# 沖泡要求裡的錯誤
mistake-tea-missing = 請說明是哪一款茶，或至少是哪一類茶。
mistake-tea-unknown = 沒有找到這款茶。請說它的茶類，或其中一款：{ $allowed }。
mistake-chart-unwritable = 圖寫不進 { $file }。請寫一個已有資料夾裡的檔名。
mistake-tea-ambiguous = 符合的茶不只一款：{ $allowed }。請說明是哪一款。
mistake-family-unknown = 茶類須為以下之一：{ $allowed }。
mistake-family-differs = { $tea } 屬於 { $family }；請不填茶類，或填這一類。
mistake-vessel-missing = 請說明用哪一種茶器：{ $allowed }。
mistake-vessel-unknown = 茶器須為以下之一：{ $allowed }。
mistake-volume-missing = 請說明茶器裝滿時有多少毫升。
mistake-volume-out-of-range = 茶器容量須在 { $least } 到 { $most } 毫升之間。
mistake-leaf-out-of-range = 這件茶器的茶葉須在 { $least } 到 { $most } 克之間，葉子才有舒展的空間。
mistake-water-out-of-range = 水溫須在 { $least } 到 { $most } °C 之間。
mistake-elevation-out-of-range = 海拔須在 { $least } 到 { $most } 公尺之間。
mistake-guests-out-of-range = 客人須為 { $least } 到 { $most } 之間的整數。
mistake-strength-out-of-range = 濃淡須在 { $least }（淡）到 { $most }（濃）之間；1 是一般泡法。
mistake-style-unknown = 泡法須為以下之一：{ $allowed }。
mistake-style-needs-powder = 只有茶粉才用點茶的方式；葉茶請換一種泡法。
mistake-as-brewed-out-of-range = { $field } 須在 { $least } 到 { $most } 之間。
mistake-field-unknown = 這裡沒有 { $field } 這一項；可用的是 { $allowed }。
mistake-field-missing = 缺少 { $field }。
mistake-text-expected = { $field } 須為文字。
mistake-unit-missing = { $said } 什麼呢？請連單位一起寫，例如 95 °C、120 毫升或 5 克。
mistake-size-unknown = 裝滿水，倒進量杯看看，或放上秤：1 克就是 1 毫升。也可以選最接近的。
mistake-number-expected = { $field } 須為數字。
mistake-flag-expected = { $field } 須為 true 或 false。
mistake-list-expected = { $field } 須為清單。
mistake-json-expected = 須為一個 JSON 物件。
mistake-flag-unknown = 這不是以下之一：{ $allowed }，或缺少它的值。
mistake-language-unknown = 語言須為以下之一：{ $allowed }。

# the way in
hello = 您好。我幫您算怎麼泡茶：放多少茶葉、水多熱、泡多久。請告訴我是什麼茶、用什麼器具，例如「鐵觀音，110 毫升蓋碗」。
hello-back = 您好。是什麼茶，用什麼泡？寫下來，或在下面選。
hello-short = 告訴我是什麼茶、用什麼泡，或在下面選。
# 說在按鈕文字前後、本身沒有意思的話：「好，帶我泡」。
said-around-labels = 好
    .typed = 好 / 好的 / 好吧 / 對 / 好啊 / 好喔 / 嗯 / 喔 / 那 / 那就 / 請 / 麻煩 / 麻煩你 / 是 / 行 / 可以 / 謝謝 / 吧 / 唔該 / 咁
# Said at any step and of anything: “done”. Where something else was asked, it answers that, and not the brew that goes on meanwhile.
said-at-any-step = 好了
    .typed = 好了 / 好喇 / 都好了 / 下一步 / 下一個 / 太久了 / 遲了 / 更多 / 其他 / 等等 / 等一下 / 暫停 / 跳過 / 繼續 / 回來了 / 結束 / 停 / 夠了 / 到此為止 / 再來 / 為什麼 / 放好了 / 做好了
# 說要列出的哪一個：「那就第一個」。
said-around-the-chosen = 那就
    .typed = 那就 / 那 / 就 / 我要 / 我們要 / 我選 / 我想要 / 我想報 / 我想上 / 我報 / 我們報 / 幫我報 / 幫我選 / 要 / 選 / 報 / 來 / 揀 / 我揀 / 還是 / 好了 / 就好 / 就好了 / 好啦 / 吧 / 可以嗎 / 好嗎 / 謝謝 / 那個 / 的課
# 說的是列出的哪一個：最後一個、第一個、第二個。
said-for-last = 最後一個
    .typed = 最後一個 / 最後一堂 / 最後那堂 / 最後那個 / 最尾嗰個
said-for-1 = 第一個
    .typed = 第一個 / 第一堂 / 第一節 / 第一門 / 第一種 / 第一項 / 第一 / 第1個 / 第1堂 / 第1節 / 第1門 / 第1種 / 第1項 / 第1 / 選第一個 / 要第一個 / 我要第一個 / 我選第一個 / 我要第一堂
said-for-2 = 第二個
    .typed = 第二個 / 第二堂 / 第二節 / 第二門 / 第二種 / 第二項 / 第二 / 第2個 / 第2堂 / 第2節 / 第2門 / 第2種 / 第2項 / 第2 / 選第二個 / 要第二個 / 我要第二個 / 我選第二個 / 我要第二堂
said-for-3 = 第三個
    .typed = 第三個 / 第三堂 / 第三節 / 第三門 / 第三種 / 第三項 / 第三 / 第3個 / 第3堂 / 第3節 / 第3門 / 第3種 / 第3項 / 第3 / 選第三個 / 要第三個 / 我要第三個 / 我選第三個 / 我要第三堂
said-for-4 = 第四個
    .typed = 第四個 / 第四堂 / 第四節 / 第四門 / 第四種 / 第四項 / 第四 / 第4個 / 第4堂 / 第4節 / 第4門 / 第4種 / 第4項 / 第4 / 選第四個 / 要第四個 / 我要第四個 / 我選第四個 / 我要第四堂
said-for-5 = 第五個
    .typed = 第五個 / 第五堂 / 第五節 / 第五門 / 第五種 / 第五項 / 第五 / 第5個 / 第5堂 / 第5節 / 第5門 / 第5種 / 第5項 / 第5 / 選第五個 / 要第五個 / 我要第五個 / 我選第五個 / 我要第五堂
very-well = 好的。
hello-again = 我在，剛才說到這裡：
choice-brew = 泡一泡茶
    .typed = 泡茶 / 沖茶 / 開始
choice-language = English / 中文
    .typed = language / 語言 / 语言
choice-shop = 找店家
    .typed = 問店家 / 真人 / 店主 / 找人
choice-english = English
choice-traditional = 繁體中文
choice-simplified = 简体中文
ask-language = 用哪種語言好呢？
language-changed = 好，我們用繁體中文。
nothing-to-read = 這則訊息裡我看不到文字。
not-understood = 這句我沒看懂。
reads-two-languages = 我只看得懂中文和英文。其他的字，我只認得茶名、茶器和帶單位的數字。
off-topic = 這個不在我的茶桌上；我只懂泡茶、茶具保養和店裡的事。
about-me = 我是這家店的泡茶幫手，是程式，不是真人。告訴我什麼茶、用什麼泡，我就照您的壺杯算出茶葉、水溫和時間，再一泡一泡陪您泡。您的口味我會記住，課程也可以問我；我答不了的，會轉給店家。
you-are-welcome = 不客氣，請慢用。
until-next-time = 下次見，慢慢喝。
glad-it-tastes = 真好。告訴我是什麼茶、用什麼泡的，我把泡法記下來。
as-you-like = 好的。
tap-too-old = 那個選項屬於已經結束的話題。請直接寫給我，或在下面選。
tap-already-so = 現在就是這樣了。
nothing-before = 前面沒有了。
flow-changed = 這期間我的說明更新了；您說過的都還在。
one-at-a-time = 先說定這個，另一件事請稍後再問我一次：「{ $rest }」
ask-forget = 要我忘記關於您的一切嗎？包括器具、口味、對話和提問，忘了就找不回來。
choice-forget = 全部忘記
    .typed = 是 / 忘記 / 好
choice-keep = 保留
    .typed = 不 / 不要
forgotten = 這裡關於您的一切都刪掉了，包括您問店家的問題。已經傳進聊天室的訊息會留在那邊。
kept = 都留著。

# the main job
ask-tea = 是什麼茶？請寫茶名，或選茶類。
ask-tea-again = 請寫茶名，或選茶類：
brew-of-family = 這一類我會算的有這些；架上今天有哪些，要問店家。您要哪一種？
ask-which-of-these = 有不只一種茶符合，您說的是哪一種？
ask-which-to-plan = 要我把哪一種從頭到尾算好？
ask-family-of-unknown = 我不認得「{ $unknownTea }」。它屬於哪一類？知道茶類我就能算。
ask-family = 它屬於哪一類茶？
ask-vessel = 用什麼來泡？
ask-vessel-of-these = 這幾樣都可以；小的可以多泡幾次，滋味也更鮮明。用哪一個？
ask-vessel-nearest = 這種器具我不認得。請選最接近的：看大小，看有沒有蓋子或濾網。
ask-other-vessel = 是這裡面的一種嗎？直接描述也可以。
ask-size = 裝滿是多少毫升？
ask-change = 想改哪一項？
ask-leaf = 您要放幾克茶葉？
ask-water = 您的水有多熱？
choice-family = { FAMILY($item) }
choice-tea = { TEA($item) }
choice-vessel = { VESSEL($item) }
choice-size = { ML($item) }
choice-other-tea = 另一種茶
choice-other-vessel = 別的器具
choice-first-vessels = 回到前面的器具
choice-why = 為什麼這樣
    .typed = 為什麼 / 為什麼是這些數字 / 點解
choice-change = 改一改
    .typed = 改 / 更改
choice-another-tea = 換一種茶
choice-plan-again = 看泡法
    .typed = 泡法
choice-leaf-so-much = { GRAMS($soMany) }茶葉
    .typed = 克 / 茶葉 / 克茶葉
choice-so-many-infusions = { NUMBER($soMany) } 泡
    .typed = 泡 / 次 / 道
choice-back-to-plan = 就照這樣
choice-change-tea = 茶
choice-change-vessel = 器具
choice-change-size = 容量
choice-change-leaf = 茶葉份量
choice-change-water = 水溫
choice-lighter = 淡一點
choice-stronger = 濃一點
choice-you-say = 由您建議
brew-by-its-look = 照您說的樣子，多半是：
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
brew-comes-stronger = 好，泡濃一些。
brew-title = { TEA($tea) } · { VESSEL($vessel) } · { ML($volumeMl) }
brew-title-family = { FAMILY($family) } · { VESSEL($vessel) } · { ML($volumeMl) }，按這類茶的一般情形
brew-as-kept = （照您這款茶平常的泡法。要改什麼，直接說。）
brew-kept = 記下來了，當作您泡{ TEA($tea) }的平常泡法：下次只寫茶名就好。在「我的茶」裡可以看，也可以取消。
brew-kept-family = 記下來了，當作您泡{ FAMILY($family) }的平常泡法：下次只寫茶名就好。在「我的茶」裡可以看，也可以取消。
nothing-to-keep = 還沒有可以記的泡法：請先告訴我什麼茶、用什麼泡。
brew-title-bowl = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
} · 茶碗點茶
brew-as-last-time = （用的是您上次的器具；換了請告訴我。）
brew-as-in-the-shop = （這是店裡的泡法。請在下面告訴我您用什麼器具。）
brew-leaf = 茶葉：{ GRAMS($plan-leafG) }，約 { SPOONS($plan-spoons) } 平茶匙；乾茶{ $plan-fill }。
brew-bags = 茶包 { $plan-bags } 個：細碎茶葉共約 { GRAMS($plan-leafG) }，出味快。
brew-spoonful = 這款茶一平茶匙約 { GRAMS($spoonG) }{ $spoons ->
    [1] 。
   *[other] ；{ SPOONS($spoons) } 平茶匙大約是 { GRAMS($leafG) }。
}
brew-leaf-enough = 夠的，這份泡法就是照 { GRAMS($plan-leafG) }算的。
brew-no-scale = 沒有秤：抓一把、捏一撮，各人差很多；茶匙舀滿，用刀背刮平，就夠準了。
brew-leaf-powder = 茶粉：{ GRAMS($plan-leafG) }，約 { SPOONS($plan-spoons) } 平茶匙，過篩，加水 { ML($plan-waterMl) }，打到起沫。
brew-leaf-little = 這個器具放這些茶葉偏少（一般放 { GRAMS($usualG) }），茶湯只有平常濃度的 { PERCENT($strength) } 左右。
brew-leaf-little-fits = 要平常的濃度，用約 { ML($fitsMl) }的器具泡，或多放些茶葉。
brew-leaf-little-longer = 也可以少泡幾次、每次泡久些：{ DURATIONS($times) }，濃度約是這樣的 { NUMBER($strength, maximumFractionDigits: 1) } 倍。
brew-leaf-much = 這個器具放這些茶葉偏多（一般放 { GRAMS($usualG) }），就算時間縮到最短，濃度也約是平常的 { NUMBER($strength, maximumFractionDigits: 1) } 倍。
brew-leaf-much-fits = 要平常的濃度，用約 { ML($fitsMl) }的器具泡，或少放些茶葉。
choice-longer-fewer = 泡久些、少泡幾次
    .typed = 簡單一點 / 有沒有簡單一點的泡法 / 太麻煩了 / 懶人泡法 / 泡久一點少泡幾次 / 少泡幾次 / 少泡幾次泡久些
brew-fill-bottom = 剛好鋪滿底
brew-fill-tenth = 約佔十分之一
brew-fill-fifth = 約佔五分之一
brew-fill-quarter = 約佔四分之一
brew-fill-third = 約佔三分之一
brew-fill-half = 約佔一半
brew-fill-more = 超過一半
brew-water = 水：{ DEGREES($waterC, $unit) }；總共燒 { ML($kettleMl) }。
brew-water-usual = 一般用 { DEGREES($waterC, $unit) } 左右的水；其餘要看用什麼來泡。
brew-dose-right = { $is ->
    [more] { GRAMS($leafG) }比一般的 { GRAMS($usualG) }多，也可以，時間我算短了
    [less] { GRAMS($leafG) }比一般的 { GRAMS($usualG) }少，也可以，時間我算長了
   *[same] { GRAMS($leafG) }正好
}。
brew-heat-right = { DEGREES($toldC, $unit) } 正好{ $isSame ->
    [yes] {""}
   *[no] ，一般用 { DEGREES($waterC, $unit) } 左右
}。
brew-heat-doubted = { DEGREES($toldC, $unit) } 比一般的 { DEGREES($waterC, $unit) } { $is ->
    [cooler] 涼，出味慢一些
   *[hotter] 熱，出味快，也容易苦
}。要用這個溫度，說「{ DEGREES($toldC, $unit) }」。
brew-heat-hotter = { DEGREES($toldC, $unit) } 比一般的 { DEGREES($waterC, $unit) } 熱，不要緊，只是出味快一些，我照這個算。
brew-heat-hot = { DEGREES($toldC, $unit) } 對這茶偏熱：一般用 { DEGREES($waterC, $unit) } 左右，再熱容易苦。用這麼熱的水，時間要短。
brew-heat-cooler = { DEGREES($toldC, $unit) } 比一般的 { DEGREES($waterC, $unit) } 涼：出味慢一些，我照這個算。
brew-boils-here = 您那裡的水大約 { DEGREES($boilsAtC, $unit) } 就開，以後我都照這個算。
brew-boils-enough = 您那裡的水大約 { DEGREES($boilsAtC, $unit) } 就開，夠熱了：一般用 { DEGREES($waterC, $unit) } 左右。
brew-boils-short = 您那裡的水大約 { DEGREES($boilsAtC, $unit) } 就開，一般要 { DEGREES($waterC, $unit) } 左右：水一開就沖，出味慢一些，我照這個算。
brew-ahead = { $nth ->
    [1] 例如{ VESSEL($vessel) } { ML($volumeMl) }
   *[other] 或者{ VESSEL($vessel) } { ML($volumeMl) }
}：茶葉 { GRAMS($leafG) }（約 { SPOONS($spoons) } 平茶匙），{ DEGREES($waterC, $unit) }，{ $count ->
    [1] { DURATION($firstS) }，泡一次
    [2] { DURATIONS($times) }
    [3] { DURATIONS($times) }
   *[other] { DURATIONS($times) }……共 { $count } 泡
}。
brew-lasts = { $nth ->
    [1] { $n ->
        [0] { GRAMS($stockG) }不夠泡一次
       *[other] { GRAMS($stockG) }大約夠泡 { $n } 次
    }
   *[other] { $n ->
        [0] 這樣也不夠
       *[other] 或者大約 { $n } 次
    }
}：{ VESSEL($vessel) } { ML($volumeMl) }，每次 { GRAMS($leafG) }。
brew-water-so-hot = { ML($waterMl) }的水要到 { DEGREES($waterC, $unit) }：
brew-leaf-without = 沒有秤也行，份量我也會用茶匙告訴您。
brew-water-without = 沒有溫度計也行：水燒開後要放多久，或加多少冷開水，我會照您的茶算好。
brew-water-stood = 壺裡 { ML($kettleMl) }的水燒開後掀蓋放 { DURATION($seconds) }，大約是 { DEGREES($waterC, $unit) }（± { SPREAD($uncertaintyC, $unit) }）；蓋著蓋會更熱。
brew-water-stood-right = 泡這款茶差不多了。
brew-water-stood-hot = 要 { DEGREES($wantedC, $unit) }，往壺裡加 { ML($coolMl) }冷開水，或再放 { DURATION($seconds) }。
brew-water-stood-cool = 這款茶要 { DEGREES($wantedC, $unit) }，再加熱一下。不想加熱，就寫「用 { DEGREES($waterC, $unit) } 的水」，我照這個重新算。
brew-kettle-near = 選 { DEGREES($settingC, $unit) } 就好，跟要用的 { DEGREES($wantedC, $unit) } 差不多。
brew-kettle-hotter = 選 { DEGREES($settingC, $unit) }。要到 { DEGREES($wantedC, $unit) }，{ ML($waterMl) }的水加 { ML($coolMl) }冷開水，或掀蓋放 { DURATION($seconds) }。
brew-kettle-cooler = 選最熱的 { DEGREES($settingC, $unit) }；一般用 { DEGREES($wantedC, $unit) }。寫「用 { DEGREES($settingC, $unit) } 的水」，我把時間算長一些。
brew-water-boiling = 水：剛燒開（您那裡是 { DEGREES($waterC, $unit) }）；總共燒 { ML($kettleMl) }。
brew-water-cold = 水：冷水，{ DEGREES($waterC, $unit) }，{ ML($waterMl) }；全程放冰箱。
brew-warm = 先用熱水溫器具，再把水倒掉。
brew-rinse = 用同樣的水洗茶 { DURATION($plan-rinseS) }，這道不喝。
brew-time-once = 時間：{ DURATION($plan-firstS) }，泡一次。
brew-follows = 會跟著變：您改了什麼，我都重新算過。照現在的泡法：
brew-steeped-instead = 不煮，用沖泡的話：
brew-times = 時間：{ DURATIONS($plan-times) }，共 { $plan-count } 泡。
brew-so-many-cups = 要 { NUMBER($n) } 杯就每杯照放：茶葉 { GRAMS($plan-leafG) }、水 { ML($plan-waterMl) }，一共 { GRAMS($leafG) }茶葉。時間不變。
brew-yield = 每泡約出湯 { ML($plan-pouredMl) }，全部約 { ML($plan-pouredInAllMl) }。
brew-leaf-stays = 茶葉留在杯裡：喝到剩三分之一就續水。
brew-leaf-stays-hot = 茶葉留在瓶裡，水一直熱著：喝到剩三分之一就續水。要帶著喝好幾個小時，會濃到約 { NUMBER($share, maximumFractionDigits: 1) } 倍：那就只放 { GRAMS($lessG) }，或泡好濾掉茶葉再裝瓶。
brew-leaf-stays-hours = 茶葉留在瓶裡：放得少，帶著喝好幾個小時也可以。
choice-leave-leaf-in = 茶葉留在杯裡
    .typed = 茶葉不撈 / 不撈 / 留在杯裡 / 不用撈
brew-leaf-out = 馬克杯沒有濾網：時間到了把茶湯倒進另一個杯子。沒有別的杯子，就讓茶葉留在杯裡，喝了再續。
brew-leaf-bag-out = 時間到就把茶包提起來滴乾，不要擠。一個茶包就泡這一次。
brew-caffeine = 照現在這個泡法，一共約 { NUMBER($usualMg, maximumFractionDigits: 0) } 毫克咖啡因（{ NUMBER($leastMg, maximumFractionDigits: 0) } 到 { NUMBER($mostMg, maximumFractionDigits: 0) }，各種茶葉有差別）。
brew-no-shorter = 這些茶葉沒辦法再短了，可以少放茶葉，或用涼一點的水。
brew-why-asked = 放多少、水多熱、泡多久，要看是什麼茶、什麼器具、多大，所以才問，只用來算這個。
brew-comes-with-it = 這個等一下會和份量、時間一起告訴您。
brew-size-taken = 我先當作 { ML($volumeMl) }；不是的話，寫上單位告訴我，例如「120 毫升」。
ask-tea-unsure = 沒關係，看茶葉就知道大概：一粒粒或深色長條多半是烏龍，細而黑的是紅茶，綠的是綠茶，帶銀毫的芽是白茶，壓成餅的多半是普洱，有花的是花茶或花草茶。選最像的，或說說它的樣子。
brew-how-many = { $plan-count ->
    [1] 照這個份量和器具，泡一次。
   *[other] { $plan-count } 次，之後茶葉裡就所剩不多了。
}
brew-refills = 大約可以續 { $refills } 次水，之後就沒什麼味道了。
brew-leaf-waits = 每次把茶湯全部倒出來，茶葉留在器具裡，等下一次加水。
brew-leaf-off = 時間到了把茶葉拿出來，或把茶湯全部倒出來。
brew-basket-out = 時間到了把濾網提起來，滴乾，放在碟子上；茶葉就在那裡等下一次注水。
brew-not-bitter = 準時出湯，應該濃淡剛好。哪一杯覺得太濃或太淡，告訴我，我再改時間或水溫。
brew-bitter-stays = 茶葉一直在裡面，放越久越濃，最後會苦：趁時間喝，再加水，或把茶葉拿出來。茶葉少放一點，就能放久一點。
brew-bowls = { NUMBER($guests) } 位：每人刷一碗，一共 { GRAMS($leafG) }茶粉。
brew-near-enough = 差不多就好：水溫差兩度、茶葉或時間差一成，幾乎喝不出來。
brew-as-before = 好，改回之前那樣。
brew-changed-as-asked = 只改了您要改的，其他數字跟著變。
brew-as-first = 這就是最初的泡法，還沒有改過。
ask-number-of-what = { NUMBER($soMany) } 是指什麼？
brew-caffeine-times = 照這個泡法泡 { NUMBER($n) } 份，一共約 { NUMBER($usualMg, maximumFractionDigits: 0) } 毫克咖啡因（{ NUMBER($leastMg, maximumFractionDigits: 0) } 到 { NUMBER($mostMg, maximumFractionDigits: 0) }，各種茶葉有差別）。
brew-caffeine-over = 超過歐洲食品安全局認為健康成人一天沒有顧慮的 400 毫克：少喝幾份，或用同一份茶葉再泡。心臟敏感、懷孕或服藥的人，請問醫生。
brew-caffeine-near = 茶葉濃的話，可能超過歐洲食品安全局認為健康成人沒有顧慮的一天 400 毫克（所有飲料都算在內）、一次 200 毫克：分開在一天裡喝，或少喝幾份。心臟敏感、懷孕或服藥的人，請問醫生。
brew-caffeine-within = 沒有超過歐洲食品安全局認為健康成人沒有顧慮的一天 400 毫克（所有飲料都算在內）；一次不要多過 200 毫克。心臟敏感、懷孕或服藥的人，請問醫生。
brew-few = { $n } 泡也行：照前 { $n } 泡的時間泡，之後就停。茶葉裡還有，想喝再接著泡。
brew-once = 那就照第一泡的時間，{ DURATION($plan-firstS) }，泡一次就好。
brew-once-small = 小壺小碗是一泡一泡出的，只泡一次，大半還留在茶葉裡。說「西式」，我用少一點的茶葉重新算。
brew-in-plain = 簡單說：放大約 { SPOONS($plan-spoons) } 平茶匙茶葉，加水，等 { DURATION($plan-firstS) }，把茶湯倒出來。
brew-in-plain-stays = 簡單說：放大約 { SPOONS($plan-spoons) } 平茶匙茶葉，加水，等 { DURATION($plan-firstS) }，就可以喝，茶葉留在裡面。
brew-in-steps = 說「帶我泡」，我一步一步陪您；哪個詞不明白，隨時可以問。
brew-mug-taken = 我先用一般的 300 毫升馬克杯來算，大家家裡多半都有；想用別的，告訴我。
brew-vessel-for = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}：{ $family ->
    [green] 高一點的玻璃杯看得到葉子，喝了再續；白瓷蓋碗、玻璃壺也很好，保溫杯會悶熟
    [yellow] 高一點的玻璃杯看得到葉子，喝了再續；白瓷蓋碗、玻璃壺也很好，保溫杯會悶熟
    [white] 白瓷蓋碗或玻璃壺；老白茶用大壺泡也好
    [oolong] 白瓷蓋碗，或 100 至 150 毫升的紫砂小壺，一泡一泡地喝
    [black] 白瓷蓋碗或瓷壺；有濾網的杯子也可以
    [dark] 紫砂壺或蓋碗；熟普用保溫杯也行
    [scented] 白瓷蓋碗、瓷壺或玻璃杯；不要用紫砂壺，會吸花香
    [matcha] 寬口的茶碗，配竹茶筅
   *[other] 玻璃壺，或有濾網的杯子
}。說用哪一種、裝滿多少毫升，我就幫您算。
brew-simplest = 這已經是最省事的泡法：放茶葉、注水、時間到就倒出來。差半分鐘不要緊，只是濃一點或淡一點。
brew-simplest-stays = 這已經是最省事的泡法：茶葉一直留在裡面，喝了再續，不用算秒。
brew-stews = 綠茶、黃茶在保溫杯裡會悶熟，變黃變澀：時間到最好倒出來，或改用玻璃杯。
brew-about-tea = { TEA($tea) }，我知道的是：{ FAMILY($family) }，{ brew-leaf-form }，水溫一般 { DEGREES($waterC, $unit) } 左右。
brew-rinse-of-it = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}：用熱水快速沖洗一次，約 { DURATION($seconds) }，倒掉不喝，醒茶也去塵。用馬克杯或大壺泡可以不洗。
brew-rinse-of-none = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}不必洗，洗掉的正是最好的部分。
brew-caffeine-of-it = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}：{ GRAMS($leafG) }茶配 { ML($ml) }水，第一杯約 { NUMBER($mg, maximumFractionDigits: 0) } 毫克咖啡因（{ NUMBER($leastMg, maximumFractionDigits: 0) } 至 { NUMBER($mostMg, maximumFractionDigits: 0) }，看茶葉）。
brew-caffeine-of-none = { $tea ->
    [none] { FAMILY($family) }
   *[other] { TEA($tea) }
}不含咖啡因。
brew-left-open = 這一點我沒有把握：要問人，請說「找店家」。泡法我來算。
brew-what-tea = { TEA($tea) }屬於{ FAMILY($family) }。
brew-similar = 和{ TEA($tea) }同屬{ FAMILY($family) }、最接近的是：{ LIST($told) }。說出一款，我就算泡法；店裡現在有沒有，要問店家。
brew-similar-one = { TEA($tea) }（{ $shape ->
    [same] 茶葉形狀相同
   *[other] 茶葉形狀不同
}，{ $water ->
    [same] 水溫差不多
    [cooler] 水溫較低{ $roast ->
        [true]，焙火較輕
       *[false] {""}
    }
   *[hotter] 水溫較高{ $roast ->
        [true]，焙火較重
       *[false] {""}
    }
}）
brew-compared = 並排來看 · { VESSEL($vessel) } · { ML($volumeMl) }{ $isOwn ->
    [yes] {""}
   *[no] （舉例）
}
brew-leaf-form = { $form ->
    [ball-rolled] 茶葉揉成球形
    [pellet] 茶葉揉成珠形
    [twisted-strip] 茶葉揉成條形
    [large-twisted] 條索粗大
    [long-open] 大片舒展的葉
    [needle] 茶葉像針
    [bud] 芽頭
    [flat] 扁平的葉
    [curled] 捲曲的葉
    [broken] 碎葉
    [granule] 顆粒
    [compressed] 壓成的茶
    [powder] 粉末
   *[flower] 花
}
brew-compared-one = { TEA($tea) }（{ FAMILY($family) }，{ brew-leaf-form }）：{ GRAMS($leafG) }，{ DEGREES($waterC, $unit) }，第一泡 { DURATION($firstS) }，{ $count ->
    [1] 泡一次
   *[other] 共 { $count } 泡
}。
brew-each = { TEA($tea) }：茶葉 { GRAMS($leafG) }（約 { SPOONS($spoons) } 平茶匙），{ DEGREES($waterC, $unit) }，{ $count ->
    [1] { DURATION($firstS) }，泡一次
    [2] { DURATIONS($times) }
    [3] { DURATIONS($times) }
   *[other] { DURATIONS($times) }……共 { $count } 泡
}。
brew-compared-alike = 所以泡法一樣，不同的是味道。
brew-same-family = 大致一樣：{ FAMILY($family) }我按葉形算，不看年份。老茶或緊壓的葉子，一般可以用到滾水；喝過第一杯再告訴我。
brew-compared-taste = 各是什麼味道、產在哪裡，店家最清楚：請說「找店家」。說出一款，我就算泡法。
brew-similar-unsure = 哪一款比較清淡或濃厚，我這裡說不準，可以問店家。
brew-similar-none = 我不知道和{ TEA($tea) }同一類的其他茶，可以問問店家。
brew-not-followed = 這句我不太確定是什麼意思。
# Asked beside a plan. What the rinse is for, what there is when all has been poured, and too long: common practice, no source
brew-strength-usual = 跟一般泡的一樣濃：第一杯每毫升約 { NUMBER($first, maximumFractionDigits: 1) } 毫克泡出來的成分{ $count ->
    [1] 。
   *[other] ，最後一杯約 { NUMBER($last, maximumFractionDigits: 1) }。
 }說「濃一點」或「淡一點」，我重新算。
brew-strength-more = 照您的意思比一般濃：第一杯每毫升約 { NUMBER($first, maximumFractionDigits: 1) } 毫克泡出來的成分{ $count ->
    [1] 。
   *[other] ，最後一杯約 { NUMBER($last, maximumFractionDigits: 1) }。
 }
brew-strength-less = 照您的意思比一般淡：第一杯每毫升約 { NUMBER($first, maximumFractionDigits: 1) } 毫克泡出來的成分{ $count ->
    [1] 。
   *[other] ，最後一杯約 { NUMBER($last, maximumFractionDigits: 1) }。
 }
brew-rinse-why = 用熱水沖一次，{ DURATION($plan-rinseS) }就倒掉：洗去茶塵，緊結或壓緊的茶葉也開始舒展。不想洗，說「不洗茶」就好。
brew-rinse-once = 只洗一次：熱水沖 { DURATION($plan-rinseS) }就倒掉，這道不喝；之後的第一泡就可以喝。
brew-cake = { $family ->
    [dark] 先撬下這一泡的份量，撬鬆再放進去。想知道怎麼撬，問我就好。
    [white] 先撬下這一泡的份量，撬鬆再放進去。想知道怎麼撬，問我就好。
   *[other] 餅茶多半是普洱或白茶。是的話請寫茶名，我換那一款算。
  }
brew-rinse-may-skip = 可以不洗：第一杯會帶一點茶塵，緊結的茶葉也晚一點才舒展。說「不洗茶」，我就照不洗的重新算。
brew-rinse-not-needed = 這樣泡不用洗茶，第一泡就可以喝。想洗的話，熱水沖幾秒就倒掉。
brew-rinse-forgotten = 沒關係：沒洗也能喝，只是可能帶一點茶塵，葉子舒展得慢一點。
brew-rinse-water = 倒掉就好，淋在杯子上還能溫杯。裡面有茶塵。
brew-no-rinse = 照您的意思，不洗茶。
brew-half-full = 只泡一半的話：茶葉 { GRAMS($leafG) }、水 { ML($waterMl) }，時間差不多。
brew-warm-why = 用熱水燙一下，倒掉再放茶葉：茶具是冷的，第一泡就會降好幾度。
brew-warm-not-needed = 這樣泡不必先溫；想溫的話，用熱水燙一下再倒掉也可以。
brew-fill-up = 每次約 { ML($plan-waterMl) }水，加上茶葉，離杯口還差一點點。
brew-fill-part = 每次約 { ML($plan-waterMl) }水，不用加滿：茶葉少，水也少放。
brew-any-vessel = 耐沸水、倒得出茶湯的，或能連茶葉一起喝的，都可以；數字跟著器具算。
brew-size-to-the-brim = 不放茶葉、裝到滿是多少。茶葉和碗口該留的空間我會算進去。
brew-size-any-unit = 毫升、盎司、幾杯都可以。
brew-for-whole = 是全部的量：{ GRAMS($plan-leafG) } 茶葉一次放進去，{ $plan-count } 泡都用它，幾個人喝都一樣。每泡約出湯 { ML($plan-pouredMl) }，大家分。
brew-ounces = 茶葉 { NUMBER($leafOz, maximumFractionDigits: 2) } 盎司，每泡水 { NUMBER($waterOz, maximumFractionDigits: 1) } 液量盎司（美制）：1 盎司是 28.35 克，1 液量盎司是 29.57 毫升。
# Common practice, no source
brew-in-bowl = 碗沒有蓋子，我照馬克杯來算。
brew-in-saucepan = 小湯鍋可以當壺用：水在鍋裡燒好，離火，再下茶葉、蓋上蓋，用濾網倒出來。倒多少水，就當它是多大。
brew-in-iron-pot = 鐵壺很吃熱，我算進去了：先燙透再泡；內壁上釉的不能放在爐上。
brew-in-jar = 玻璃罐多半不耐滾水，可能裂開：有缺口、刮痕的別用；先用熱的自來水溫一溫，放在木頭或布上，慢慢倒，等不燙手再拿。用馬克杯更安全。
brew-no-coffee-maker = 茶葉不要放進咖啡機或摩卡壺：茶葉會脹，可能堵住洩壓的地方。最多拿它燒水，茶就泡在耐沸水的器具裡：馬克杯、壺或公道杯都行。
brew-leaf-dry = 乾茶，袋裡拿出來什麼樣就稱什麼樣，還沒下水。濕葉要重好幾倍。
brew-in-all = { $plan-count } 泡的浸泡時間一共 { DURATION($plan-allS) }，第一杯只要 { DURATION($plan-firstS) }。燒水、倒茶和喝茶的時間另算，喝到哪一杯都可以停。
brew-ending = { $plan-count } 泡以後茶葉裡就所剩不多了。還喜歡就繼續泡，每次泡久很多；喝起來像白開水，就結束了。
brew-ending-once = 一次就好：冷泡第二次會很淡。
brew-too-long = 只是越來越濃、越來越苦：一發現就倒出來，加熱水調到順口。下一泡照原來的時間就好。
brew-too-long-stays = 會變濃：加熱水就好。
brew-too-long-cold = 在冰箱裡多放幾個小時只是比較濃，加冷水調淡就好。把茶葉拿出來，一天內喝完。
brew-about-more = 產地和味道，店家比我清楚：請說「找店家」。
brew-drawn-stronger = 泡 { DURATION($seconds) }而不是 { DURATION($plannedS) }，第一杯的濃度大約是原來的 { NUMBER($share, maximumFractionDigits: 1) } 倍。
brew-drawn-weaker = 泡 { DURATION($seconds) }而不是 { DURATION($plannedS) }，第一杯的濃度大約只有原來的 { PERCENT($share) }。
brew-drawn-as-planned = 正好，就是照這個時間算的。
brew-drawn-alike = 泡 { DURATION($seconds) }而不是 { DURATION($plannedS) }，第一杯幾乎喝不出差別。
brew-age = 年份我不算在裡面：先照上面泡，喝了再告訴我味道。
brew-infusion-later = 現在先不改：泡到第 { NUMBER($n) } 泡時，說「短一點」或「久一點」就好。
brew-weighed-hotter = 先照算好的 { DEGREES($plannedC, $unit) } 就好。用 { DEGREES($waterC, $unit) } 的話出味更快、更香，也更容易苦澀，時間要改成 { DURATIONS($times) }。想這樣就說「熱一點」。
brew-weighed-cooler = 先照算好的 { DEGREES($plannedC, $unit) } 就好。用 { DEGREES($waterC, $unit) } 的話更柔更甜，香氣低些，時間要改成 { DURATIONS($times) }。想這樣就說「涼一點」。
brew-weighed-more-leaf = 這個器具放 { GRAMS($plannedG) }剛好。放 { GRAMS($leafG) }的話，{ $alike ->
    [yes] 濃度一樣
   *[no] 第一杯的濃度是原來的 { NUMBER($share, maximumFractionDigits: 1) } 倍
}，時間 { DURATIONS($times) }。想這樣就說「多放茶葉」。
brew-weighed-less-leaf = 這個器具放 { GRAMS($plannedG) }剛好。放 { GRAMS($leafG) }的話，{ $alike ->
    [yes] 濃度一樣
   *[no] 第一杯的濃度是原來的 { PERCENT($share) }
}，時間 { DURATIONS($times) }。想這樣就說「少放茶葉」。
brew-weighed-longer = 先照上面的時間試。久一點，{ DURATIONS($times) }，第一杯的濃度是原來的 { NUMBER($share, maximumFractionDigits: 1) } 倍，也更容易苦澀。想這樣就說「久一點」。
brew-weighed-shorter = 先照上面的時間試。短一點，{ DURATIONS($times) }，第一杯的濃度只有原來的 { PERCENT($share) }。想這樣就說「短一點」。
brew-weighed-stronger = 上面是一般的濃度，先喝喝看。濃一點的話，放 { GRAMS($leafG) }，時間 { DURATIONS($times) }，第一杯的濃度是原來的 { NUMBER($share, maximumFractionDigits: 1) } 倍。想這樣就說「濃一點」。
brew-weighed-lighter = 上面是一般的濃度，先喝喝看。淡一點的話，放 { GRAMS($leafG) }，時間 { DURATIONS($times) }，第一杯的濃度是原來的 { PERCENT($share) }。想這樣就說「淡一點」。
brew-weighed-so-much-leaf = 時間是照 { GRAMS($plannedG) }算的。放 { GRAMS($leafG) }的話，時間 { DURATIONS($times) }，{ $alike ->
    [yes] 濃度一樣
   *[no] 第一杯的濃度是原來的 { PERCENT($share) }
}。想這樣就說「{ GRAMS($leafG) }」。
brew-weighed-so-hot = 時間是照 { DEGREES($plannedC, $unit) } 算的。用 { DEGREES($waterC, $unit) } 的話，時間要改成 { DURATIONS($times) }；水越熱出味越快，也越容易苦澀。想這樣就說「{ DEGREES($waterC, $unit) }」。
brew-weighed-no-further = 不用，以這些茶葉和這個茶器，往那邊也調不了多少了。
brew-begin-when = 好。水燒好了就說「帶我泡」，或者注好水說一聲「注好了」，我來計時。
brew-still-there = 泡法仍照上面。
brew-calls-cold = 可以：說「帶我泡」，放進冰箱時告訴我一聲，好了我在這裡叫您，只是半夜不叫。
brew-calls = 可以：說「帶我泡」，水注好時告訴我一聲，時間到我在這裡叫您。
brew-no-further = 以這些茶葉和這個茶器，只能調到這裡了。
brew-stays-warm-lidded = 茶留在裡面、蓋著蓋，室溫 { DEGREES(20, $unit) }時，大約 { DURATION($drunkAfterS) }降到 { DEGREES($drunkFromC, $unit) }，大約 { DURATION($lukewarmAfterS) }降到微溫的 { DEGREES($lukewarmC, $unit) }；這是按大小和器壁算的，會差三分之一上下。茶湯先濾出來，免得一直泡；用保溫套或溫過的保溫瓶可以更久。
brew-stays-warm-open = 茶留在裡面，室溫 { DEGREES(20, $unit) }時，大約 { DURATION($drunkAfterS) }降到 { DEGREES($drunkFromC, $unit) }，大約 { DURATION($lukewarmAfterS) }降到微溫的 { DEGREES($lukewarmC, $unit) }；這是按大小和器壁算的，會差三分之一上下。蓋個小碟子，或用溫過的保溫瓶，可以更久。
brew-stays-warm-insulated = 好的保溫瓶蓋緊了，茶大約 { DURATION($drunkAfterS) }內都在 { DEGREES($drunkFromC, $unit) }以上，會差三分之一上下。茶葉先濾掉再裝，免得悶壞；只剩微溫以後就別再放上幾個小時。
brew-size-for-leaf = 這麼多茶葉，大約要 { ML($volumeMl) }的器具。下面照這個大小算；大一點就淡些，小一點就濃些。
infusion-time = 第 { $n } 泡：{ DURATION($infusion-seconds) }。
mistake-no-such-infusion = 這個泡法只有 { $most } 泡。
standing-answer = { ANSWER($answer) }
standing-answer-or-shop = 如果這不是您要問的，請說「找店家」。
safety-unknown = 健康和安全的事我不想亂猜；若與身體有關，請問醫師或藥師。
answer-none-yet = 這個還沒有常備回覆；您就是店家，就不另外轉了。
ask-when-answered = 您的問題店家收著，有空就會回，我不能保證多快。回覆會自己傳到這裡，不用守著。
sorry-for-that = 抱歉讓您不愉快。請說「找店家」，寫下哪裡不對，會由人來回覆。
ask-pass-on = 這個我答不上來。要我轉給店家嗎？回覆會傳到這裡。
choice-pass-on = 轉給店家
    .typed = 好 / 是 / 好的 / 問吧 / 幫我問 / 幫我問一下 / 問問看 / 幫我轉 / 好 問吧 / 轉告 / 幫我轉告 / 幫我轉告店家 / 幫我轉達 / 請轉告 / 轉告老闆 / 幫我問老闆 / 好 幫我問 / 好 幫我轉告 / 好 幫我問老闆 / 麻煩幫我問 / 麻煩幫我轉告 / 麻煩你了 / 好 麻煩你
choice-leave-it = 不用了
    .typed = 不 / 不用 / 唔使 / 不用轉 / 不用轉了 / 不必轉 / 別轉 / 唔使轉 / 不轉
choice-never-mind = 算了
    .typed = 不用 / 沒事 / 唔使
ask-question = 要轉告什麼？請寫在一則訊息裡。
ask-that = 「{ $lastAsked }」要我轉告這一句嗎？想問別的，請寫在一則訊息裡。
choice-pass-that-on = 轉告這一句
    .typed = 好 / 是 / 好的 / 對 / 就這個 / 就這句 / 就問這個 / 問吧 / 幫我問 / 轉吧 / 係 / 好呀
choice-ask-else = 問別的
    .typed = 別的 / 其他問題 / 問其他 / 不是這個
passed-on = 已轉給店家。他們有空就會回，回覆會傳到這裡。
lesson-to-shop = 課程由店家親自安排。要我把您的問題轉過去嗎？
# with a booking: the file for the student's own calendar
lesson-calendar = 加到行事曆
lesson-calendar-cancelled = 從行事曆移除
lesson-calendar-notes = { $teacher ->
    [none] { "" }
   *[other] 帶課：{ $teacher }。
 }{ $bring ->
    [none] { "" }
   *[other] 攜帶物品：{ $bring }。
 }


# the house itself
house-unknown-tap = 這個選項已經不能用了，請直接寫下您想要的。
house-stumbled = 抱歉，這則訊息我處理不來，已經記下了。請換個說法再試。
house-wordless = 這裡本來有話要告訴您，但沒能說出來，抱歉，店家會知道。如果是急事（例如正在泡的茶、快開始的課），請先照您已知道的做，或直接問店家。
house-rung = { DURATION($seconds) }

# the check of the flow files
flows-checked = { $flows } 個流程、{ $places } 個位置、{ $sentences } 個句子：沒有問題。

# over the infusion ladder
ladder-title = 逐泡

# names of vessels, families and ways of brewing
vessel-gaiwan = 蓋碗
vessel-clay-pot = 紫砂壺
vessel-porcelain-pot = 瓷壺
vessel-glass-pot = 玻璃壺
vessel-metal-pot = 金屬壺
vessel-iron-pot = 鐵壺
vessel-saucepan = 小湯鍋
vessel-kyusu = 急須
vessel-mug = 馬克杯
vessel-infuser-mug = 濾網杯
vessel-french-press = 法壓壺
vessel-thermos = 保溫瓶
vessel-tumbler = 玻璃杯
vessel-jar = 玻璃罐
vessel-cold-jar = 冷泡瓶
family-green = 綠茶
family-yellow = 黃茶
family-white = 白茶
family-oolong = 烏龍茶
family-black = 紅茶
family-dark = 黑茶（普洱）
family-scented = 花茶
family-herbal = 花草茶
family-matcha = 抹茶
style-gongfu = 工夫泡
style-western = 大壺或馬克杯
style-grandpa = 杯中留葉續水
style-cold = 冰箱冷泡
style-whisked = 點茶
style-cupping = 評茶

# cautions, by their id
# 沖泡時的提醒。數值出處同英文檔
caution-keep-cold = 小心：全程放冰箱 5 °C 以下，瓶子要乾淨，一天內喝完。
caution-flower-allergy = 小心：對菊科花或花粉過敏就別喝；不確定請問醫師。
caution-herb-allergy = 小心：對這種植物或同類的花、花粉、穀物過敏就別喝；不確定請問醫師。
caution-hot-water = 小心：熱水會燙傷，遠離小孩，慢慢倒。
caution-very-hot-drink = 小心：等茶降到 65 °C 以下再喝。
caution-glass-shock = 小心：冷玻璃遇沸水會裂，先溫一溫。
caution-caffeine-adult = 小心：整壺的咖啡因可能超過 200 毫克，請分著喝或與人同喝。
caution-pregnancy = 懷孕或哺乳時，能喝多少請問醫師或助產士。
caution-children = 含咖啡因的茶不適合幼兒；大一點的孩子請問醫師。
caution-medicines = 正在服藥的話，請問醫師或藥師這茶能不能一起喝。

# 冷泡時會問的。室溫兩小時：FDA 給家庭的建議，憑記憶；冰塊、過濾、前一晚：一般做法，沒有出處
cold-begin-before = 放在冰箱裡要 { DURATION($seconds) }：想喝之前這麼久放進去，或前一晚放，早上把茶葉拿出來。
cold-begin-by = 要在{ $wanted }喝，最晚{ $by }放進冰箱，早一兩個小時也無妨。
cold-begin-evening = 要在{ $wanted }喝，最晚{ $by }就要放進冰箱。前一晚放更省事，早上把茶葉拿出來；多泡幾個小時會濃一點，加冷水就好。
cold-begin-late = 到那時只有 { DURATION($leftS) }，它要 { DURATION($seconds) }。現在放進去，會淡一點；或用熱水泡濃，倒在冰塊上。
cold-ready-at = { $begun }開始，{ $ready }就好了。
cold-ready-night = { $begun }開始，{ $ready }就好了。放到起床再把茶葉拿出來：會濃一點，加冷水就好。
cold-stands = 在冰箱裡多放幾個小時沒關係：會濃一點，加冷水就好。一天內喝完。
cold-stands-hours = 在冰箱裡放 { DURATION($seconds) }，大約是原本的 { NUMBER($strength, maximumFractionDigits: 1) } 倍濃，加冷水就好。一天內喝完。
cold-stands-short = 不到它要的 { DURATION($seconds) }，會淡一點。
cold-stands-too-long = 別放那麼久：全程放冰箱，一天內喝完。
cold-on-the-way = 要跟冰箱裡一樣冷才行：放保冷袋加冰磚，或裝進用冰水涮過的保溫瓶。停著的車裡太熱。在溫熱處放超過兩小時的，請倒掉。
cold-strain = 用濾網或咖啡濾紙倒進乾淨的瓶子；都沒有的話，用瓶蓋擋住茶葉，慢慢倒。
cold-taste-early = 隨時可以用乾淨的湯匙嚐一口。味道合意就把茶葉拿出來；在那之前會慢慢變濃。
cold-is-ready = 放進冰箱滿 { DURATION($seconds) }就可以把茶葉拿出來。拿不準就用乾淨的湯匙先嚐一口，味道合意就好。
cold-unchilled = 不建議：室溫放好幾個小時容易長細菌，冷泡要全程放冰箱。沒有冰箱就用熱水泡濃一點，再倒在冰塊上。
cold-still-good = 一直放在 5 °C 以下的冰箱、瓶子乾淨、還沒超過一天，就可以喝。在外面放過兩小時以上的，請倒掉。
cold-lid = 要蓋好：茶會吸冰箱的味道，也要保持乾淨。
cold-ice = 可以，用冰水或加冰塊都行，只是泡得稍慢一點。


# 終端機裡的泡法
plan-title = { TEA($tea) } · { VESSEL($vessel) } · { ML($volumeMl) }
plan-title-family = { FAMILY($family) } · { VESSEL($vessel) } · { ML($volumeMl) }
plan-leaf = 茶葉  { GRAMS($leafG) }（約 { SPOONS($spoons) } 平茶匙）；乾葉佔茶器的 { PERCENT($fill) }
plan-water = 水  { DEGREES($waterC) }，每次 { ML($waterMl) }；總共燒 { ML($kettleMl) }
plan-water-cold = 水  冷水 { DEGREES($waterC) }，{ ML($waterMl) }；全程放冰箱
plan-clamped = 沸點  您那裡是 { DEGREES($boilsAtC) }；{ $style ->
    [cupping] 請寫在品評結果旁
   *[other] 時間已為此加長
}
plan-warm = 溫器  先用熱水溫過茶器，再倒掉
plan-rinse = 潤茶  用同樣的水 { DURATION($seconds) }；這道不喝
plan-rung = { DURATION($seconds) }
plan-caffeine = 咖啡因  總共約 { NUMBER($usualMg, maximumFractionDigits: 0) } 毫克（茶葉有別，{ NUMBER($leastMg, maximumFractionDigits: 0) } 到 { NUMBER($mostMg, maximumFractionDigits: 0) }）
plan-cup = { NUMBER($guests) } 杯，每杯約 { ML($cupMl) }
plan-way-boil = 水一停止沸騰就用。
plan-way-mix = { $nth ->
    [1] 沒有溫度計：
   *[other] 或用 {""}
}{ ML($boilingMl) }沸水加 { ML($coolMl) }冷開水（± { SPREAD($uncertaintyC, $unit) }）。
plan-way-wait = { $nth ->
    [1] 沒有溫度計：水燒開後
   *[other] 或水燒開後
}掀蓋放 { DURATION($seconds) }（± { SPREAD($uncertaintyC, $unit) }）。
plan-way-pitcher = 或倒過涼的公道杯 { NUMBER($pours) } 次（± { SPREAD($uncertaintyC, $unit) }）。
plan-chart-strength = 濃度，毫克/毫升
plan-chart-left = 葉中所餘

# 為什麼這樣泡
why-leaf = { GRAMS($leafG) }茶葉配 { ML($waterMl) }水，每克 { NUMBER($mlPerG) } 毫升；乾葉佔茶器的 { PERCENT($fill) }，有舒展的空間。
why-water-warmed = { DEGREES($waterC) } 的水（您那裡 { DEGREES($boilsAtC) } 沸騰）碰到茶葉和器壁後是 { DEGREES($warmC) }；茶器若是冷的只有 { DEGREES($coldC) }，溫器多得 { NUMBER($costC) } 度。
why-water-unwarmed = { DEGREES($waterC) } 的水（您那裡 { DEGREES($boilsAtC) } 沸騰）在冷的茶器裡降到 { DEGREES($coldC) }；不溫器少了 { NUMBER($costC) } 度，時間已為此加長。
why-water-cold = { DEGREES($waterC) } 的水帶出甜味，把大部分苦味留在葉裡，只是要用小時來算。
why-times = { DURATION($firstS) }讓第一杯到 { NUMBER($strength, maximumFractionDigits: 1) } 毫克/毫升；剩下的出得慢，所以 { NUMBER($count) } 泡裡的最後一泡要 { DURATION($lastS) }，有 { NUMBER($lastStrength, maximumFractionDigits: 1) } 毫克/毫升。
why-time = { DURATION($firstS) }讓茶湯到 { NUMBER($strength, maximumFractionDigits: 1) } 毫克/毫升；這些茶葉能給的，{ NUMBER($count) } 泡就給完了。

# how it tasted
ask-taste = 喝起來怎麼樣？
ask-taste-nearest = 明白了，最接近哪一種？
ask-remember-taste = 要我替您記住嗎？
choice-remember = 記住
    .typed = 好 / 是 / 好的 / 好呀
choice-how-was-it = 說說味道
choice-bitter = 苦澀
choice-weak = 太淡
choice-flat = 平淡
choice-sour = 發酸
choice-lost-scent = 沒香氣
choice-right = 剛好
    .typed = 剛好 / 剛剛好 / 好喝 / 很好喝 / 不錯 / 很不錯 / 讚 / 很好 / 很讚 / 好飲 / 幾好飲 / 啱啱好 / 正好 / 完美
taste-cause-bitter = 苦澀多半是水太熱，或泡太久。
taste-cause-strong = 太濃多半是茶葉放多了，或泡太久。
taste-cause-dry = 口乾、發澀是茶多酚出得多：水太燙、泡太久都會；新的生普、濃的紅茶和碎葉本來就多。
taste-cause-weak = 太淡多半是時間不夠，或茶葉太少。
taste-cause-sour = 發酸或有悶味，多半是泡得太久、蓋著悶了。
taste-cause-flat = 平淡多半是水不夠熱，葉子沒有舒展開。
taste-cause-lost-scent = 水不夠熱，或出湯後還蓋著蓋子，香氣就跑了。
taste-cause-right = 那就好。
cup-reckoned-for = 照這個算：{ VESSEL($vessel) } { ML($volumeMl) }。
cup-heat-over = { DEGREES($value, $unit) } 對這茶偏熱，一般用 { DEGREES($usual, $unit) }。水越熱出味越多，苦澀的部分更是。
cup-heat-under = { DEGREES($value, $unit) } 對這茶偏涼，一般用 { DEGREES($usual, $unit) }。水不夠熱，出味就少。
cup-time-over = 泡了 { DURATION($value) }，一般是 { DURATION($usual) }，{ $infusion ->
    [1] 這杯
   *[other] 第 { $infusion } 泡
}的濃度大約是平常的 { NUMBER($share, maximumFractionDigits: 1) } 倍。
cup-time-under = 泡了 { DURATION($value) }，一般是 { DURATION($usual) }，{ $infusion ->
    [1] 這杯
   *[other] 第 { $infusion } 泡
}的濃度大約只有平常的 { PERCENT($share) }。
cup-leaf-over = 放了 { GRAMS($value) }茶葉，一般是 { GRAMS($usual) }，濃度大約是平常的 { NUMBER($share, maximumFractionDigits: 1) } 倍。
cup-leaf-under = 放了 { GRAMS($value) }茶葉，一般是 { GRAMS($usual) }，濃度大約只有平常的 { PERCENT($share) }。
cup-remedy = 下次：{ LIST($parts) }。
cup-next-heat = 水溫 { DEGREES($usual, $unit) }
cup-next-time = 時間 { DURATION($usual) }
cup-next-leaf = 茶葉 { GRAMS($usual) }
cup-as-usual = 照您說的，這杯泡得跟我算的差不多，剩下的就看口味了。
taste-water-down = 下次水溫降到 { DEGREES($waterC, $unit) }（這次是 { DEGREES($fromC, $unit) }）。
taste-water-up = 下次水溫升到 { DEGREES($waterC, $unit) }（這次是 { DEGREES($fromC, $unit) }）。
taste-strength-down = 下次早點出湯，茶湯淡約 { PERCENT($share) }。
taste-strength-up = 下次泡久一點，茶湯濃約 { PERCENT($share) }。
taste-leaf-down = 下次茶葉少放約 { PERCENT($share) }。
taste-leaf-up = 下次茶葉多放約 { PERCENT($share) }。
taste-likely = 有可能。
taste-stays = 那就照這樣。
taste-far-enough = 能調的都調了，也許換一種茶更合您口味。
taste-remembered = 記住了，這一類茶都照這樣。
taste-kept = （照您對{ FAMILY($family) }的口味：{ LIST($parts) }。）
taste-mended = （上一杯{ $taste ->
    [bitter] 苦澀
    [strong] 太濃
    [dry] 發澀
    [weak] 太淡
    [flat] 平淡
    [sour] 發酸
   *[other] 沒香氣
 }，這次{ LIST($parts) }。說「記下來」就留著，說「恢復平常」就不改。）
brew-unknown-tea = 「{ $unknownTea }」我不認得，這是按它那一類算的。
mistake-number-in-words = 這裡需要一個數字，例如 150。

# Telegram: how the bot presents itself, what its menu offers, and what a tap there says
telegram-name = 爐邊茶話
telegram-about = 您的茶、您的壺：放多少、多熱、多久。
telegram-description =
    告訴我您有什麼茶、用什麼器具泡，我會算出茶量、水溫和每一泡的時間，泡的時候也陪在一旁。
    課程也可以問我。答不了的我會轉給店家，回覆會送到這裡。
telegram-command-brew = 這款茶怎麼泡
telegram-command-my-tea = 您的口味、茶具和泡過的茶
telegram-command-lessons = 店裡的課程
telegram-command-shop = 找店家
telegram-command-language = 英文或中文
telegram-command-back = 上一步
telegram-command-start-over = 重新開始
telegram-says-brew = 泡一泡茶
telegram-says-my-tea = 我的茶
telegram-says-lessons = 有什麼課程？
telegram-says-shop = 我想找店家
telegram-says-language = English / 中文
telegram-says-back = 上一步
telegram-says-start-over = 重新開始
telegram-token-refused = Telegram 不接受這個權杖。請到建立機器人的地方重新取得，再寫進設定。
telegram-unreachable = 目前連不上 Telegram。我會繼續試，其他功能照常。
telegram-second-copy = 另一份程式正用同一個權杖連 Telegram，而只能有一份。請停掉另一份，或給這一份自己的機器人。

# channels/mail
mail-unreachable = 連不上郵件伺服器，信會等到連上再寄。請看 NINTHPOUR_SMTP_URL。
mail-login-refused = 郵件伺服器不接受這組登入，信會等到 NINTHPOUR_SMTP_URL 改對再寄。
mail-foot = 有變動的話，直接回覆這封信就好，店裡會有人看。

# core/lessons: 課程裡的錯誤
mistake-lesson-title-missing = 這堂課叫什麼名字？
mistake-lesson-past = { $starts } 已經過了，請給一個之後的時間。
mistake-lesson-day-missing = 是哪一天？
mistake-lesson-time-missing = 幾點開始？
mistake-lesson-level-unclear = 這堂課給初學、有些基礎，還是進階的人？
mistake-lesson-seats-missing = 有幾個座位？
mistake-lesson-seats = 座位不能是 { $seats } 個，{ $most ->
    [1] 最多 1 個
   *[other] 須為 1 到 { $most } 個
 }。
mistake-lesson-minutes = 一堂課須為 1 到 { $most } 分鐘，不能是 { $minutes } 分鐘。
mistake-lesson-ends-before-start = 這樣會在 { $starts } 開始、{ $ends } 結束。請把兩個時間再說一次。
mistake-lesson-time-unreadable = 「{ $starts }」我讀不出是哪一天幾點。
mistake-lesson-hour-unclear = 「{ $words }」是早上還是晚上？
mistake-lesson-hour-never = 那一天 { $zone } 的時鐘往前撥，不會出現 { $starts }。請換一個時間。
mistake-lesson-hour-twice = 那一天 { $zone } 的時鐘往回撥，{ $starts } 會出現兩次。請換一個時間。
mistake-lesson-series-hour-never = { $zone } 的時鐘不會出現 { $starts }，那堂課在 { $begins } 開始。
mistake-lesson-series-hour-twice = { $zone } 的時鐘會出現兩次 { $starts }，那堂課在第一次時開始。
mistake-lesson-date-unreadable = 沒有「{ $words }」這一天。
mistake-lesson-date-unclear = 「{ $words }」可以是兩個不同的日子。請把月份寫清楚，例如 12月5日。
mistake-lesson-weekday-differs = { $date } 不是那個星期幾。哪一個才對？
mistake-lesson-zone-unknown = 沒有叫「{ $zone }」的時區。寫法像 Asia/Taipei 這樣。
mistake-lesson-sentence-too-long = 請用一句話說，最多 { $most } 個字。
mistake-lesson-there-already = 現在就是 { WHEN($starts) }。要改到什麼時候？
mistake-lesson-changed-meanwhile = 剛才有人改了這堂課，現在是 { WHEN($starts) } 開始。請再看一次。
mistake-lesson-cancelled = 這堂課已經取消了。
mistake-lesson-not-cancelled = 這堂課沒有停開。
mistake-lesson-over = 這堂課已經結束了。
mistake-lesson-started = 這堂課已經開始了。
mistake-lesson-already-booked = 您已經報名這堂課了。
mistake-lesson-already-back = 對方已經又訂了這堂課。
mistake-lesson-booking-unknown = 沒有找到這筆報名。
mistake-lesson-booking-left = 這筆報名已經退掉了。
mistake-lesson-booking-not-seated = 這筆報名還沒有座位。
mistake-lesson-leave-closed = 座位可以退到 { WHEN($until) } 為止。如果不能來，請跟店裡說一聲。
mistake-lesson-offer-gone = 保留的時間已過，座位已經讓給下一位。
mistake-lesson-offer-open = 請先決定要不要為您保留的座位。
mistake-lesson-full = { $free ->
    [0] 已經沒有座位了。
   *[other] 只剩 { $free } 個座位。
}
mistake-lesson-seats-below-taken = 已經有 { $taken } 個座位有人，{ $seats } 個不夠。
mistake-lesson-door-closed = 開課前一小時起才能點名。

# content: 課程或報名表格裡的錯誤
lesson-table-place = 第 { $line } 行，{ $column }：{ $mistake }
lesson-table-there = 已經有 { $file } 了，請換個檔名。
lesson-table-past = 另有 { $count } 堂已經過了，沒有收進來。
mistake-lesson-table-series = 定期課程請寫在 data/shop/lessons.yaml 或在聊天裡排；這裡一堂一堂寫。
mistake-lesson-table-tea = 茶品目錄裡沒有「{ $words }」。
mistake-lesson-table-empty = 表格是空的；第一行須寫欄位名稱。
mistake-lesson-table-column-missing = 缺少這一欄。
mistake-lesson-table-column-unknown = 沒有這一欄。
mistake-lesson-table-column-twice = 這一欄出現兩次。
mistake-lesson-table-id = 「{ $words }」不能用在連結裡：最多 40 個字元，只用 A–Z、a–z、0–9、點、連字號、底線。
mistake-lesson-table-number = 「{ $words }」不是整數。
mistake-lesson-table-choice = 「{ $words }」不是以下之一：{ $allowed }。
mistake-lesson-table-instant = 「{ $words }」不是 UTC 時間，寫法像 2026-12-06T02:00Z。
mistake-lesson-table-twice = 「{ $words }」在第 { $earlier } 行已經有了。
lesson-table-missing = 沒有 { $file } 這個檔案。
mistake-lesson-table-cells = 這一行的格數太少或太多；每一行要和第一行的欄數一樣。
mistake-lesson-table-quote = 這裡的引號夾在格子中間；請把整格放進引號，裡面的引號寫兩次。
mistake-lesson-table-quote-open = 這一行開了引號，後面一直沒有關上。
mistake-lesson-table-encoding = 這裡有不是 UTF-8 的字元；請用 UTF-8 重新存檔。
mistake-lesson-table-no-yaml = 從這裡起不是 YAML：請看看行首的空格、冒號和引號。
mistake-lesson-table-no-list = 這裡應該是一份清單：每一項以連字號開頭。
mistake-lesson-table-no-item = 這裡應該寫出各欄，像「seats: 2」。
mistake-lesson-table-no-text = 這裡應該是文字或數字，不是清單。
mistake-lesson-table-no-tea = 至少要有一款茶。
mistake-lesson-table-tea-name = 茶品目錄裡這款茶叫「{ $words }」；名稱請在 data/teas/catalogue.yaml 裡改。
mistake-lesson-row-no-lesson = 沒有「{ $words }」這堂課。
mistake-lesson-row-nameless = 缺少名字。
mistake-lesson-row-mail = 「{ $words }」不是電子郵件地址；沒有地址的人請留空。
mistake-lesson-row-there = { $name } 已經在這堂課的名單上了。
mistake-lesson-row-full = { $free ->
    [0] 已經沒有座位了；要候補請在 standing 欄寫「waiting」。
   *[other] 只剩 { $free } 個座位；要候補請在 standing 欄寫「waiting」。
}
mistake-lesson-row-waits-untold = 候補的人是用郵件通知空位的，這裡需要地址。
mistake-lesson-row-new = 這一格由系統填寫；新報名的人請留空。
mistake-lesson-row-unknown = 沒有「{ $words }」這筆報名；新報名的人請留空。
mistake-lesson-row-edited = 這筆報名現在不是這樣（{ $seats } 個座位）；已有的報名請在聊天裡改，不在這裡改。

# the hand-over to the shop
ask-waits = 您的問題已留給店家。店裡現在沒有人在線上，回覆會傳到這裡。
ask-enough = 您已有五個問題在等店家，請先等那些有了回覆。
ask-kept-answer = 店家說：{ $heard-kept-answer }
shop-told-answer =
    您問：{ $question }
    店家回覆：{ $text }
shop-told-correction =
    您問：{ $question }
    更正：店家先前的回覆有誤，請以這個為準：{ $text }
shop-told-answer-about = 回覆這個問題：{ $question }
shop-told-correction-about = 更正這個問題的回覆：{ $question }
shop-told-question = 有客人問：{ $question }
shop-told-waiting = { $n }. { $question }
shop-told-kept = { $n }. { $question } – { $reply }
shop-told-earlier = 這位客人先前問：{ $question } – 當時的回覆：{ $answer }
shop-told-same = 以前有人問：{ $question } – 當時的回覆：{ $answer }
shop-told-gone = （已不再保存）
shop-told-code = 還沒有店主。{ $minutes } 分鐘內把 { $code } 傳到這裡的人，就成為店主。
shop-welcome = 您現在是店主了。客人的問題會轉到這裡；寫「問題」就能看到還在等的。
shop-code-wrong = 這個代碼無效，或已經失效。
shop-not-yours = 這只限店主使用。
shop-nothing-waiting = 沒有問題在等。
shop-waiting = 有 { $count } 個問題在等，最早的排在前面。
shop-question = 客人用{ $it-language ->
    [zh-Hant] 繁體中文
    [zh-Hans] 簡體中文
   *[en] 英文
}問：{ $it-question }
shop-write-answer = 請寫下回覆，會一字不改地傳給客人。
shop-which-one = 您寫的時候又來了一個問題。這是回覆「{ $it-question }」嗎？
shop-left-waiting = 它仍留在等待的問題裡。
shop-answered = 已傳給客人，回覆的是：{ $it-question }
shop-answered-waits = 這位客人目前不接收訊息：您給「{ $it-question }」的回覆先留著，客人回來就會收到。
shop-for-whom = 這聽來是要我做的事。要當作「{ $it-question }」的回覆傳給客人嗎？
shop-none-sent = 這裡沒有已傳出的回覆，所以沒有可以更正的。
shop-sent = 已傳出的回覆，最新的在前。要更正哪一個？
shop-ask-correction = 客人問：{ $sent-question } – 您回覆：{ $sent-reply } – 請寫下正確的回覆，傳出前會先給您看。
shop-correction-sure = 問「{ $sent-question }」的客人會收到這個，並註明是更正：{ $draft } – 要傳嗎？
shop-as-sent = 回覆維持原樣。
shop-corrected = 已當作更正傳給客人。
shop-corrected-waits = 改好了。這位客人目前不接收訊息：更正先留著，客人回來就會收到。
shop-corrected-kept = 留作常備的那個回覆也一併改好了。
shop-corrected-meanwhile = 店裡有人剛剛更正過了。
shop-ask-wording = 這個回覆要留給哪個問題？請寫成一般人會問的樣子，不要寫名字。客人問的是：{ $it-question }
shop-kept = 留好了。有人這樣問，就會得到這個回覆。
shop-kept-as-asked = 留好了。有人這樣問，就會得到這個回覆；若問題原話的主人要我忘記，它也會一併刪去。
shop-nothing-kept = 沒有留著的回覆。
shop-standing = 留著的回覆，最新的在前：
shop-dropped = 已刪去。
mistake-question-answered = 這個問題已不用回：店裡有人回過了，或客人收回了。
mistake-answer-same = 現在的回覆就是這樣寫的。
mistake-question-gone = 這個問題和回覆已不再保存。
mistake-kept-answer-gone = 這個回覆已不再保存。
choice-shop-questions = 客人的問題
    .typed = 問題 / 提問
choice-shop-question = 回覆 { $n }
    .typed = 第一個 / 第一題 / 第一條
choice-shop-same = 再傳那個回覆
choice-shop-send-it = 是，傳給這位
choice-shop-other = 不是，看看有哪些問題
choice-shop-later = 先放著
choice-shop-next = 下一個問題
    .typed = 下一個
choice-shop-done = 就這些
    .typed = 完成
choice-shop-correct = 更正這個回覆
    .typed = 更正 / 改正 / 更正回覆 / 改回覆 / 寫錯了 / 答錯了 / 這個錯了 / 改一下
choice-shop-correct-n = 更正 { $n }
choice-shop-another-answer = 是另一個回覆
    .typed = 不是這個 / 另一個
choice-shop-as-sent = 維持原樣
    .typed = 算了 / 不用了 / 不改了 / 唔改喇 / 照舊
choice-shop-send-correction = 是，傳出更正
    .typed = 傳出 / 傳吧 / 傳 / 發吧 / 送出
choice-shop-other-words = 重新寫回覆
choice-shop-keep = 留作常備回覆
    .typed = 留著 / 存起來 / 存 / 留著 / 記下來 / 當常備回覆
choice-shop-as-asked = 照客人的原話
choice-shop-keep-not = 不用留
choice-shop-standing = 留著的回覆
choice-shop-drop = 刪去 { $n }

# what is kept of a person, and forgetting it
my-data-page = 這裡存有的關於您的一切都在一個檔案裡：就在本頁最下方的「存有我的什麼」。
my-data-why = 為什麼要留：您寫的和我答的，留 { $messageDays } 天，免得遺漏或說兩遍。您的茶具、口味和最近幾泡，省得我再問。您的提問和報名，好讓店家回覆、替您留位子；這些店家看得到，其他人我一概不給。{ $idleDays ->
        [0] 留到您說「忘記我」為止。
       *[other] { $idleDays } 天沒來過就全部刪掉；說「忘記我」就馬上刪。
    }備份再過 { $backupDays } 天也會刪掉。
my-data-here = 以下是這裡存有的關於您的一切：
    { $everything }
other-device-page = 本頁最下方的「在另一台裝置上看這張小箋」會給一組號碼。在那台裝置打開本頁，把號碼填在頁尾，兩邊就都看得到。
other-device-telegram = 這段對話在您所有裝置的 Telegram 裡都有，在那邊打開就行。
other-device-here = 這裡的對話帶不走。在店家的網頁上，頁尾可以取一組號碼，在另一台裝置上打開同一張小箋。
forget-page = 這一頁上還看得到的只在您的裝置上；按最下方的「為下一位換一張新箋」就會清掉。
# the guided brew
choice-guide = 帶我泡
    .typed = 帶我 / 帶著我泡 / 帶住我沖 / 引導我 / 跟住做 / 跟住你做 / 跟著做 / 陪我泡 / 一步一步 / 教我泡 / 帶我沖 / 教我沖 / 從頭帶我泡
choice-guide-ready = 備好了
    .typed = 好 / 弄好了 / 搞定 / 搞定了 / 擺好了 / 準備好了 / 好了 / 好喇 / 都好了 / 都準備好了 / 得 / 得喇 / 得咗 / 搞掂 / 好啦 / 好囉
choice-guide-done = 做好了
    .typed = 好 / 弄好了 / 搞定 / 搞定了 / 完成 / 好了 / 好喇 / 下一步 / 溫好了 / 溫過了 / 溫了 / 倒了 / 倒掉了 / 溫咗 / 倒咗 / 得 / 得喇 / 搞掂 / 好啦 / 好囉
choice-guide-in = 茶葉放好了
    .typed = 好 / 好了 / 好喇 / 放好了 / 放了 / 放進去了 / 得 / 得喇 / 落咗 / 好啦 / 好囉
choice-guide-rinsed = 洗好了
    .typed = 好 / 弄好了 / 搞定 / 搞定了 / 洗完了 / 好了 / 好喇 / 洗過了 / 洗了 / 倒掉了 / 得 / 得喇 / 洗咗 / 好啦 / 好囉
choice-guide-filled = 注好水了
    .typed = 好 / 好了 / 好喇 / 注水了 / 注好了 / 水倒好了 / 倒好水了 / 倒水了 / 倒進去了 / 水倒進去了 / 加好水了 / 加水了 / 沖了 / 沖水了 / 放進冰箱了 / 放冰箱了 / 做好了 / 得 / 得喇 / 好啦 / 好囉
choice-guide-poured-on = 水注上去了
    .typed = 注上去了 / 倒了 / 倒好了 / 倒咗 / 倒上了 / 剛倒了
choice-guide-poured = { $style ->
    [cold] 濾好了
    [grandpa] 喝到三分之一了
   *[other] 出湯了
}
    .typed = 好 / 好了 / 好喇 / 倒出來了 / 出湯 / 出湯了 / 出好了 / 倒好了 / 倒了 / 倒咗 / 倒出了 / 濾好了 / 拿出來了 / 喝了 / 我喝了 / 已經喝了 / 得 / 得喇 / 好啦 / 好囉
choice-guide-next-filled = { $style ->
    [cold] 濾好了，下一泡也注好水
    [grandpa] 喝了，也添好水了
   *[other] 出湯了，下一泡也注好水
}
    .typed = 注好水了
choice-guide-at-night = { $at } 照樣叫我
    .typed = 半夜也叫我 / 照樣叫我
choice-guide-longer = 泡久了
    .typed = 太久了 / 遲了
choice-guide-taste = { $item ->
    [right] 剛好
    [bitter] 苦
   *[weak] 淡
}
choice-guide-why = 為什麼
choice-guide-more = 其他情況
    .typed = 更多 / 其他
choice-guide-seconds = { DURATION($item) }
choice-guide-degrees = { DEGREES($item, $unit) }
choice-guide-people = { $item } 位
choice-guide-pause = 歇一歇
    .typed = 等等 / 等一下 / 暫停 / 我要出門一下 / 出門一下 / 等我一下 / 我離開一下
choice-guide-skip = 跳過這一泡
    .typed = 跳過
choice-guide-cooler = 水涼了些
    .typed = 水涼了 / 水冷了 / 水放涼了 / 水凍咗
choice-guide-new-kettle = 換了新熱水
    .typed = 重新燒水了 / 重新燒了 / 又燒了 / 又燒熱了 / 再燒熱了 / 燒開了 / 換熱水了 / 水又燒開了 / 換了熱水 / 再燒水了
choice-guide-guests = 人數變了
    .typed = 客人多了 / 人多了 / 有人來了 / 人少了
choice-guide-go-on = 接著泡
    .typed = 繼續 / 回來了
choice-guide-finish = 泡到這裡
    .typed = 收杯 / 結束 / 夠了 / 喝夠了 / 不喝了 / 不泡了 / 到此為止 / 泡完了 / 喝完了 / 就到這裡 / 唔飲喇
choice-guide-end-and-begin = 先結束它，泡這款
choice-guide-end-for-other = 換器具重新泡
    .typed = 重新泡 / 換器具 / 換那個 / 換 / 重新開始 / 重來 / 重新來
choice-guide-poured-in-time = { $style ->
    [cold] 準時濾好了
   *[other] 準時出湯了
}
    .typed = 準時 / 只是忘了按 / 忘了按 / 只忘了按 / 早就倒了 / 有準時倒
choice-guide-it-stood = 一直泡著
    .typed = 一直泡 / 還泡著 / 忘了倒 / 泡到現在 / 忘了
choice-guide-was-cold = 一直在冰箱裡
    .typed = 是 / 是的 / 對 / 有 / 在冰箱 / 冰箱裡
choice-guide-was-not-cold = 沒有，或不確定
    .typed = 沒有 / 不是 / 不確定 / 不知道 / 室溫 / 放在桌上
choice-guide-brew-again = 照樣再泡
    .typed = 再來 / 同樣再泡一次
guide-two-brews = 您的{ $name }還在泡，到第 { $n } 泡。一次顧一壺比較清楚。
guide-set-out = 備具：{ VESSEL($brew-vessel) }、茶葉 { GRAMS($brew-leafG) }（約 { SPOONS($brew-spoons) } 平茶匙）。燒水 { ML($brew-kettleMl) }，到 { DEGREES($brew-waterC, $memory-unit) }。
guide-set-out-bags = 備具：{ VESSEL($brew-vessel) }、茶包 { $brew-bags } 個。燒水 { ML($brew-kettleMl) }，到 { DEGREES($brew-waterC, $memory-unit) }。
guide-set-out-powder = 備具：茶碗、茶筅、細篩、茶粉 { GRAMS($brew-leafG) }。燒少許水到 { DEGREES($brew-waterC, $memory-unit) }。
guide-set-out-cold = 備具：乾淨的{ VESSEL($brew-vessel) }、茶葉 { GRAMS($brew-leafG) }（約 { SPOONS($brew-spoons) } 平茶匙）、冷水 { ML($brew-waterMl) }。
guide-set-out-pitcher = 旁邊放公道杯，先倒進去再分，每杯才一樣。
guide-set-out-guests = 擺 { $brew-guests } 個杯子，自己的放最後。
guide-care-table = 水壺和電線離桌邊遠一點，別讓小孩靠近。
guide-care-lid = 捏住碗沿和蓋鈕；熱氣從蓋縫出來，縫口朝外。
guide-warm = 用熱水溫茶具，再把水倒掉。
guide-measure = 放茶葉 { GRAMS($brew-leafG) }，約 { SPOONS($brew-spoons) } 平茶匙。
guide-measure-bags = 放入茶包 { $brew-bags } 個，線掛在杯沿外。
guide-smell = 蓋上一會兒，聞聞溫熱的乾茶香。
guide-rinse = 注入 { DEGREES($brew-waterC, $memory-unit) } 的水，數到 { $brew-rinseS }，倒出。這一道不喝。
guide-count = 第 { $brew-n } 泡：高處注水，數到 { $brew-seconds }，低處出湯，瀝乾。
guide-counting = 現在數到 { $brew-seconds }，出湯後說一聲「倒了」。
guide-water-on = 那就當作水剛注下去。如果已經出湯，說一聲「倒了」。
guide-fill = 第 { $brew-n } 泡，{ DURATION($brew-seconds) }：注入 { DEGREES($brew-waterC, $memory-unit) } 的水 { ML($brew-waterMl) }，注好就按一下。
guide-top-up = 第 { $brew-n } 泡，{ DURATION($brew-seconds) }：再添滿 { DEGREES($brew-waterC, $memory-unit) } 的水，添好就按一下。
guide-fill-cold = 第 { $brew-n } 泡，在冰箱裡 { DURATION($brew-seconds) }：注入冷水 { ML($brew-waterMl) }，蓋好放進冰箱，再按一下。
guide-cups = { $brew-guests } 位，每位約 { ML($brew-cupMl) }。
guide-invite = 先請客人，手掌向上；主人陪飲。
guide-holding = 第 { $brew-n } 泡：從您按下起 { DURATION($brew-seconds) }。到時我叫您。
guide-holding-till-evening = 第 { $brew-n } 泡要到 { $from } 才好。為了不吵您休息，我 { $to } 就叫您，早一點，味道也差不多了。
guide-holding-till-morning = 第 { $brew-n } 泡要到 { $from } 才好。冷泡不急，不吵您睡覺，我 { $to } 再叫您；到時若太濃，加些冷開水就好。
guide-told-clock = { CLOCK($wall) }
guide-told-until = 第 { $n } 泡，{ DURATION($seconds) }
guide-pour-now = { $late ->
    [no] { $style ->
        [cold] 第 { $n } 泡好了：取出來濾掉茶葉。
        [grandpa] 第 { $n } 泡可以喝了。留三分之一在杯裡再添水。
       *[other] 現在出湯，第 { $n } 泡：低處倒，瀝乾。
    }
    [some] { $style ->
        [cold] 第 { $n } 泡好了：取出來濾掉茶葉。
        [grandpa] 第 { $n } 泡可以喝了。留三分之一在杯裡再添水。
       *[other] 現在出湯，第 { $n } 泡。抱歉，我叫晚了 { DURATION($lateS) }。
    }
   *[long] { $style ->
        [cold] 第 { $n } 泡 { DURATION($lateS) }前就好了；抱歉，我剛才不在。現在濾掉茶葉，太濃就加些冷開水。
        [grandpa] 第 { $n } 泡 { DURATION($lateS) }前就可以喝了；抱歉，我剛才不在。留三分之一在杯裡再添水。
       *[other] 第 { $n } 泡本該在 { DURATION($lateS) }前出湯；抱歉，我剛才不在。若還泡著，先嚐一口再請客人喝。
    }
}
guide-told-poured = 第 { $n } 泡：{ DURATION($seconds) }。
guide-told-below = 接在下面。
guide-told-late = 晚了 { DURATION($seconds) }出湯，{ $next }。
guide-told-early = 早了 { DURATION($seconds) }出湯，{ $next }。
guide-told-rest-more = 茶葉歇了一會兒，這一泡多泡 { DURATION($seconds) }。
guide-told-rest-less = 茶葉歇了一會兒，這一泡少泡 { DURATION($seconds) }。
guide-told-next-more = 這一泡多泡 { DURATION($seconds) }
guide-told-next-less = 這一泡少泡 { DURATION($seconds) }
guide-told-next-same = 下一泡照舊
guide-told-next-none = 茶味已經泡盡了
guide-told-water = 之後用 { DEGREES($waterC, $unit) } 的水，{ $next }。
guide-told-drawn = 好，那就 { DURATION($seconds) }。
guide-told-longer = 之後泡久一點，{ $next }。
guide-told-shorter = 之後泡短一點，{ $next }。
guide-told-next-paced = 這一泡照舊，下一泡大約 { DURATION($seconds) }。
guide-told-pace-end = 以這些茶葉和這個茶器，只能調到這裡了。
guide-told-guests = { $guests } 位：每位約 { ML($cupMl) }。
guide-told-guests-two = { $guests } 位，一泡每位只有 { ML($cupMl) }：兩泡併在公道杯裡再分。
guide-told-later = 第 { $n } 泡大約 { DURATION($seconds) }；前面幾泡出湯以後會再算一次。
guide-told-now = 現在是第 { $n } 泡（大約共 { $ends } 泡）：{ DURATION($seconds) }，水 { DEGREES($waterC, $unit) }，茶葉 { GRAMS($leafG) }。
guide-told-left = 第 { $n } 泡（大約共 { $ends } 泡）正在泡，還有 { DURATION($seconds) }：水 { DEGREES($waterC, $unit) }，茶葉 { GRAMS($leafG) }。
guide-told-whisk = 茶粉 { GRAMS($leafG) }，{ DEGREES($waterC, $unit) } 的水 { ML($waterMl) }，刷大約 { DURATION($seconds) }。
guide-told-spent = 茶味已經泡盡了。
guide-told-taste-right = 好，就照這樣。
guide-told-taste-far = 能調的都調了；換一款茶也許更合您。
guide-told-taste-stronger = 之後濃一點，{ $next }。這類茶的口味我記住了。
guide-told-taste-lighter = 之後淡一點，{ $next }。這類茶的口味我記住了。
guide-told-taste-water = 之後用 { DEGREES($waterC, $unit) } 的水，{ $next }。這類茶的口味我記住了。
guide-told-taste-next-stronger = 下次濃一點；這類茶的口味我記住了。
guide-told-taste-next-lighter = 下次淡一點；這類茶的口味我記住了。
guide-told-taste-next-water = 下次用 { DEGREES($waterC, $unit) } 的水；這類茶的口味我記住了。
guide-told-taste-more-leaf = 茶葉已經放了；下次我說多一點。這類茶的口味我記住了。
guide-told-taste-less-leaf = 茶葉已經放了；下次我說少一點。這類茶的口味我記住了。
guide-told-as-poured = 實際泡法
guide-told-tea = { TEA($tea) }
guide-told-family = { FAMILY($family) }
guide-ask-taste = 味道如何？願意的話按一下。
guide-ask-how-long = 大約泡了多久？
guide-ask-more = 有什麼變了？
guide-ask-guests = 現在幾位喝？
guide-ask-stood = { $style ->
    [cold] 第 { $n } 泡 { DURATION($sinceS) }前就好了。是一直泡著，還是只忘了按？
   *[other] 第 { $n } 泡本該在 { DURATION($sinceS) }前出湯。是一直泡著，還是只忘了按？
}
guide-stood-caution = 那先嚐一口再分，會很濃。
guide-ask-cold = 濕茶葉放了 { DURATION($awayS) }。是不是一開始就瀝乾、蓋好、放進冰箱？
guide-rinse-again = 那先用滾水沖一次倒掉，今天喝完。
guide-throw-away = 那還是丟掉吧：濕茶葉在室溫會長細菌。
guide-kept = 記下來了，當作您泡這款茶的平常泡法：下次只寫茶名就好。
guide-other-vessel = 現在這壺是照{ VESSEL($brew-vessel) } { ML($brew-volumeMl) }算的。要先把這壺泡完，還是換{ VESSEL($vessel) } { ML($volumeMl) }、用新茶葉重新泡？
guide-caffeine = 這一壺到現在約出了 { NUMBER($mg, maximumFractionDigits: 0) } 毫克咖啡因（{ NUMBER($leastMg, maximumFractionDigits: 0) } 到 { NUMBER($mostMg, maximumFractionDigits: 0) }，茶葉各有不同）。
guide-noted-already = 已經記下了。
guide-not-followed-asked = 這句我不太確定是什麼意思；說「找店家」就把問題轉過去。
guide-calls-at = { $at } 我會在這裡叫您，不用另外設定。
guide-calls-when-filled = 時間到我會叫您：水一注好就說「注好水了」。
guide-left = { $left ->
    [1] 這大概是最後一泡了。
   *[other] 連這一泡，大約還能泡 { $left } 泡。
}
guide-held-as-told = 那就當作泡了 { DURATION($seconds) }。
guide-leaf-does-not-wait = 茶葉不等人：要走就先出湯再按。泡了多久我會算進去。
guide-advice = 看味道決定：苦澀就水涼一點或短一點；太淡就泡久一點，或下一壺多放茶葉。現在先不改，喝了告訴我味道。
guide-times-follow = 每一泡的時間都照茶葉裡還剩多少算好了。哪一杯淡了就說一聲，後面的泡久一點；苦了就短一點。
guide-leaf-is-in = 已經下的茶葉不用撈，我改的是時間；下一壺再調茶葉量。
guide-quiet = 過了一小時。蓋子留一條縫，茶葉還能放幾個小時。接著泡嗎？
guide-quiet-long = 茶葉已經放了 { DURATION($awayS) }。接著泡嗎？
guide-quiet-dry = 茶葉放好了，還沒出湯。接著泡嗎？
guide-quiet-hold = { $brew-style ->
    [cold] 已經好了 { DURATION($sinceS) }：取出來濾掉茶葉，茶湯放回冰箱。濾好了嗎？
   *[other] 第 { $brew-n } 泡該出湯後已過 { DURATION($sinceS) }。接著泡嗎？
}
guide-waits = 不急，茶葉還沒下水。好了跟我說一聲。
guide-drink-after-rinse = 溫杯的水和洗茶的水都倒掉，從第一泡開始喝。
guide-drink-first = 溫杯的水倒掉，第一泡就可以喝。
guide-drink-this = 可以喝：從第一泡起都是喝的。
guide-paused = 慢慢來。瀝乾，蓋子留一條縫；四小時內再接著泡。
guide-may-skip = 可以：輪到那一泡時說「跳過」，茶葉留給下一泡。
guide-skipped = 跳過了；茶葉留給下一泡。
guide-spent = 茶味已經泡盡了。
guide-whisk = 茶粉篩進溫過的碗，加 { DEGREES($brew-waterC, $memory-unit) } 的水 { ML($brew-waterMl) }，來回快速刷到起細沫，約 { DURATION($brew-seconds) }。
guide-finish = 一共 { $count } 泡。喝完把葉底倒出來看看：葉片舒展就是泡開了。
guide-finish-cold = 放在冰箱裡，5 °C 以下，一天之內喝完。茶葉已經泡盡，倒掉就好。
guide-finish-powder = 趁沫還在時喝。茶碗和茶筅用清水沖淨，茶筅立著晾乾。
guide-finish-early = 那今天先不泡。
guide-finished-already = 這一壺已經泡完了。
guide-care-clay = 壺只用熱水沖，不用洗碗精，開蓋晾乾。
guide-care-pot = 茶具用熱水沖淨，開蓋晾乾。
guide-finish-bags = 泡好了：茶包泡一次就夠了。請慢用。
guide-why-set-out = 為什麼：茶葉一濕就不等人，所以先把東西備齊。
guide-why-warm = 為什麼：茶具是冷的，第一泡就會降好幾度，偏偏這時茶葉正要舒展。
guide-why-measure = 為什麼：時間是按 { GRAMS($brew-leafG) } 配 { ML($brew-waterMl) } 算的；茶多了時間就要短。
guide-why-rinse = 為什麼：洗茶讓茶葉濕透舒展，第一泡才不薄，也沖掉茶末。
guide-rinse-stood = 那已經算一泡茶了，出了不少味：兌點熱水喝掉，或倒掉都行。後面幾泡會淡一點。
guide-rinse-may-skip = 也可以不洗：說一聲「不洗茶」就好。
guide-why-infuse = 為什麼是 { DURATION($brew-seconds) }：看茶葉還剩多少、前面泡得怎樣來算，這樣濃淡正好。
guide-why-hold = 為什麼：時間從您按下算起；出湯，茶葉才停。
guide-why-whisk = 為什麼：茶粉不溶，只是浮著；刷開才勻，有沫才柔。

# my tea
choice-my-tea = 我的茶
choice-my-vessels = 我的茶具
choice-my-vessel = { $item-called ->
    [none] { VESSEL($item-vessel) }
   *[other] { $item-called }
}，{ ML($item-volumeMl) }
choice-my-vessel-use = 用它泡
choice-my-vessel-name = 取個名字
choice-my-vessel-forget = 忘掉它
choice-my-brews = 我泡過的茶
choice-my-brew-again = 再泡{ $item-tea ->
    [none] { FAMILY($item-family) }
   *[other] { TEA($item-tea) }
}，{ VESSEL($item-vessel) } { ML($item-volumeMl) }
choice-my-taste-reset = { FAMILY($item) }恢復平常
    .typed = 恢復平常 / 恢復原來的 / 恢復原樣 / 照平常 / 照原來的 / 照一般的 / 忘掉口味 / 忘掉這個 / 不用照我的口味 / 不要記住
my-nothing-yet = 您的茶我還沒記下什麼。
my-told-taste = { FAMILY($family) }：{ LIST($parts) }。
my-told-usual = 照平常
my-told-cooler = 水低 { $degrees } °C
my-told-hotter = 水高 { $degrees } °C
my-told-lighter = 淡 { PERCENT($share) }
my-told-stronger = 濃 { PERCENT($share) }
my-told-less-leaf = 茶葉少 { PERCENT($share) }
my-told-more-leaf = 茶葉多 { PERCENT($share) }
my-told-tea = { TEA($tea) }
my-told-family = { FAMILY($family) }
my-told-brew = { $name }，{ VESSEL($vessel) } { ML($volumeMl) }，{ $days ->
    [0] 今天
   *[other] { $days } 天前
}：{ DURATIONS($times) }{ $how }
my-told-was-untold = 。
my-told-was-right = ；剛好。
my-told-was-bitter = ；苦。
my-told-was-strong = ；濃。
my-told-was-dry = ；澀。
my-told-was-weak = ；淡。
my-told-was-flat = ；平。
my-told-was-sour = ；酸。
my-told-was-lost-scent = ；不香。
my-vessels-are = 茶具 { $count } 件。
my-brews-are = 最近泡過 { $count } 次。
my-keeps = 您平常的泡法：
my-told-keeps = { $name }，{ VESSEL($vessel) } { ML($volumeMl) }：{ GRAMS($leafG) }，{ DEGREES($waterC, $unit) }。
my-usual-gone = 取消了，那款茶之後重新計算。
choice-my-usual-drop = { $item-tea ->
    [none] { FAMILY($item-family) }
   *[other] { TEA($item-tea) }
}：取消平常泡法
my-taste-gone = 忘掉了：{ FAMILY($family) }恢復平常。
my-choose-vessel = 我記得這些。哪一件？
my-one-vessel = { $called ->
    [none] { VESSEL($vessel) }
   *[other] { $called } ({ VESSEL($vessel) })
}，{ ML($volumeMl) }
my-vessel-gone = 忘掉了。
my-ask-vessel-name = 您怎麼叫它？我就照這個名字認得它。
my-vessel-named = 以後我就認得這個名字了。
my-no-vessels = 我沒記下您的茶具。
my-no-brews = 沒有記下泡過的茶。

# 架上的標籤
label-sheet-title = 標籤 · { $shop }
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
label-scan = 掃描看完整泡法與注意事項
label-made = { $count } 張標籤，共 { $pages } 頁：{ $file }
label-print-as-is = 請照原尺寸（100 %）列印，不要縮放。
label-left-out-long = 沒有印 { TEA($tea) }：{ $size } 的標籤放不下「{ $text }」。
label-left-out-letters = 沒有印 { TEA($tea) }：「{ $text }」裡有字型沒有的字。
label-origin-missing = 標籤上的碼會打開網頁，請說網頁在哪裡：--origin https://tea.example.org，或設定 NINTHPOUR_ORIGIN。
label-origin-wrong = 「{ $origin }」不是能印的網址。請寫成 https://tea.example.org 這樣，後面不帶路徑。
label-paper-unknown = 沒有「{ $paper }」這種紙；有 { $allowed }。
label-size-unknown = { $paper } 沒有「{ $size }」這個尺寸；有 { $allowed }。
label-bot-wrong = 「{ $bot }」不是 Telegram 機器人的名字。
label-unwritable = 標籤寫不進 { $file }。請寫一個已有資料夾裡的檔名。

# core/lessons: what those who booked a lesson are told
lesson-told-head = 「{ $title }」，{ WHEN($starts) }{ $place ->
    [none] { "" }
   *[other] ，{ $place }
 }
lesson-told-to-bring = { $bring ->
    [none] { "" }
   *[other] 攜帶物品：{ $bring }。
 }
lesson-told-your-seats = { $seats ->
    [1] { "" }
   *[other] 您有 { $seats } 個座位。
 }
lesson-told-week-before = 您報名的課快到了：{ lesson-told-head }。{ lesson-told-your-seats }{ lesson-told-to-bring }
lesson-told-evening-before = 您的課就要開始了：{ lesson-told-head }。{ lesson-told-your-seats }{ lesson-told-to-bring }您能來嗎？
lesson-told-two-hours-before = 待會見：{ lesson-told-head }。{ lesson-told-your-seats }
lesson-told-thanks = 謝謝您來上「{ $title }」。想在家泡課上的哪款茶？
lesson-told-thanks-only = 謝謝您來上「{ $title }」。
lesson-told-offer = { $seats ->
    [1] 有一個座位空出來了：{ lesson-told-head }。為您保留到 { WHEN($until) }。
   *[other] 有 { $seats } 個座位空出來了：{ lesson-told-head }。為您保留到 { WHEN($until) }。
 }
lesson-told-lapsed = 保留的時間過了，座位已經輪到下一位：{ lesson-told-head }。您可以再排一次。
lesson-told-moved = 您的課改期了。原本是 { WHEN($was) }，現在是{ lesson-told-head }。新的時間若不方便，您可以退掉座位。
lesson-told-lasts = 您的課改為 { NUMBER($minutes) } 分鐘：{ lesson-told-head }。不方便的話，可以把座位退回來。
lesson-told-cancelled = 這堂課停開了：{ lesson-told-head }。很抱歉。
lesson-told-cancelled-because = 這堂課停開了：{ lesson-told-head }。店家說：{ $reason }
lesson-told-changed = 您的課有些變動，現在是：{ lesson-told-head }{ $teacher ->
    [none] { "" }
   *[other] ，由 { $teacher } 帶課
 }。{ lesson-told-to-bring }
lesson-told-recomputed = 當地的時制變了。您的課在店裡的時間不變：{ lesson-told-head }。這樣您的行事曆就對了。
lesson-told-written = 店家關於「{ $title }」（{ WHEN($starts) }）的訊息：{ $text }
lesson-told-resumed = { $standing ->
    [waiting] 這堂課還是會上：{ lesson-told-head }。您仍在候補名單上，順位不變。
   *[seated] 這堂課還是會上：{ lesson-told-head }。您的 { $seats } 個座位仍為您留著；若那天已經不方便，可以退掉。
 }
lesson-told-written-to-all = 店家寫給所有報名的人：{ $text }
lesson-told-nameless = 沒有留名
choice-lesson-coming = 我會來
choice-lesson-absent = 我不能來
choice-lesson-accept = 我要這個座位
choice-lesson-decline = 讓給別人
choice-lesson-brew = 泡{ TEA($tea) }

# flows/lesson.yaml and core/functions: lessons as students see them
lesson-list = 接下來有這些課：
lesson-more = 之後還有 { $count } 堂。
lesson-none = 目前沒有排課。過一陣子再問，或告訴店家您想學什麼。
lesson-past-then = 那一天已經過了。
lesson-one-by-one = 一堂一堂來：先選一堂，報好了再選下一堂。
lesson-none-such = 沒有這樣的課。
lesson-none-on = { $weekday ->
    [1] 星期一沒有課。
    [2] 星期二沒有課。
    [3] 星期三沒有課。
    [4] 星期四沒有課。
    [5] 星期五沒有課。
    [6] 星期六沒有課。
   *[7] 星期日沒有課。
 }
lesson-which = 是哪一堂呢？
lesson-detail-which = 每堂不一樣：選一堂，我把詳情告訴您。
lesson-costs = 「{ $title }」：{ $price }。
lesson-none-then = 那一天沒有課。
lesson-told-elsewhen = { $moves ->
    [0] 「{ $title }」不在那一天，而是{ WHEN($starts) }。
   *[other] 「{ $title }」已改到{ WHEN($starts) }。
 }
lesson-of-level = { $level ->
    [advanced] 適合已經懂不少的人：
    [intermediate] 適合已經入門的人：
   *[beginner] 這些不需要基礎。
 }
lesson-glad = 聽您這麼說真好。
lesson-glad-teas = 聽您這麼說真好。課上的茶，在家也可以泡。
lesson-told-brewed = 「{ $title }」上泡的是{ LIST($teas) }。
lesson-no-teas = 那堂課泡了什麼茶，這裡沒有記。店家知道，請說「找店家」。
lesson-which-tea = 想泡哪一款？
lesson-missed = 沒關係。這堂課還會再上：
lesson-missed-not-yet = 沒關係。這堂課還沒有排下一次。
lesson-once-more = 這堂課還會再上：
lesson-once-more-not-yet = 這堂課還沒有排下一次。
choice-lesson-wish = 告訴店家我想學什麼
lesson-which-for = { $count } 位，記著了。要報哪一堂？
lesson-bring-along = 可以，只要還有座位：報名的時候一起報就好。要報哪一堂？
lesson-heard-nothing = 我查到您的報名了，沒有問題。上課前一週、前一晚和兩小時前會傳訊息給您，夜裡不傳；報名時已經過了的，就不再補傳。
lesson-not-booked-here = 這個對話裡沒有您的報名。如果您是在店裡、打電話或在別的對話報的，店家的名單上會有。要我把您寫的轉給店家，請他們查一下嗎？
lesson-mail = 只有店家記下郵件地址的人才會收到信。要我把您寫的轉給店家，請他們記下嗎？
lesson-how-waits = 課額滿了可以候補：一有空位，就先問名單上的第一位，為他保留一段時間，再問下一位；會在這裡通知您。
lesson-reminders-off = { $which ->
    [two-hours-before] 好，上課當天不再提醒您，一週前和前一晚照舊。
    [evening-before] 好，上課前一晚不再提醒您，一週前和上課前兩小時照舊。
    [week-before] 好，一週前不再提醒您，前一晚和上課前兩小時照舊。
   *[off] 好，以後不再提醒您上課。
  }課改期或停開還是會告訴您。說「打開提醒」就能恢復。
lesson-reminders-on = 提醒又打開了。
lesson-reminders-are-off = 您關掉了{ $which ->
    [two-hours-before] 上課當天的
    [evening-before] 上課前一晚的
    [week-before] 一週前的
   *[off] {""}
  }提醒。說「打開提醒」就能恢復。
lesson-late = 您報的是{ $what }。能不能晚到要由店家決定：要我把您寫的轉給店家，讓他們知道嗎？
lesson-refund = 能不能退費要問店家：把您寫的轉給店家嗎？
lesson-late-unbooked = 能不能晚到要由店家決定。要我把您寫的轉過去嗎？
lesson-reminds = 報了名的課我都會提醒您：一星期前、前一晚、上課前兩小時，半夜不吵您。
lesson-how-many = 一共幾位？
lesson-ask-name = 門口的名單上寫什麼名字？
mistake-name-too-long = 這比名字長了。請寫在 { $most } 個字以內。
mistake-name-without-letters = 名字總要有字。
lesson-named = 記下了：{ $name }。
lesson-nothing-booked = 您目前沒有報名。
lesson-mine = 您報名了：
lesson-past = 您上過：
lesson-give-back = 要退掉嗎？{ $what }
lesson-swap-stays = 您原來的座位不變。
lesson-swap-which = 您指的是哪一個預約？
lesson-move-to-which = 要把{ $what }改到哪一堂？
lesson-told-swap = 退掉{ $was }，改上這堂：{ lesson-told-head }，{ lesson-told-seats }，好嗎？
lesson-told-swap-full = 那堂的座位不夠，您原來的座位不變：{ $was }。
lesson-told-swapped = 改好了，{ lesson-told-seats }：{ lesson-told-head }。{ $was }的座位已退；行事曆裡若有，請自行刪去。新的這堂 { WHEN($until) } 以前可以退。
choice-lesson-swap = 好，改過去
    .typed = 改 / 改吧 / 麻煩改
lesson-kept-seat = 那就為您留著。
lesson-subject = { $what ->
    [offer] 有空位了
    [lapsed] 座位讓給下一位了
    [lasts] 時長有變
    [moved] 改期了
    [cancelled] 這堂課不上了
    [cancelled-because] 這堂課不上了
    [changed] 課程有變動
    [recomputed] 請核對行事曆
    [did-leave] 退掉了
    [taken-off] 退掉了
    [resumed] 照常上課
    [put-back] 您的座位
    [written] 店裡的話
    [reseated-by-shop] 您的座位
    [transferred] 換到另一堂課
    [written-to-one] 店家的話
    [written-down] 您的座位
    [written-down-waiting] 候補名單
    [thanks] 謝謝您來上課
    [thanks-only] 謝謝您來上課
   *[other] 上課提醒
 }：「{ $title }」，{ WHEN($starts) }
lesson-subject-all = 店裡的話
lesson-when = { WHEN($starts) }
lesson-told-line = { $n }. { lesson-told-head }：{ lesson-told-state-short }
lesson-told-state-short = { $state ->
    [seated] 您有 { $seats } 個座位
    [waiting] 您在候補名單上
    [offered] 為您保留著座位
    [full] 已滿，{ $waiting } 位候補
   *[free] 還有 { $free } 個座位
 }
lesson-told-one = { lesson-told-head }。{ $minutes } 分鐘{ $teacher ->
    [none] { "" }
   *[other] ，由 { $teacher } 帶課
 }，{ $level ->
    [advanced] 適合已經懂不少的人
    [intermediate] 適合有些基礎的人
   *[beginner] 不需要基礎
 }{ $after ->
    [none] { "" }
   *[other] ，接在「{ $after }」之後
 }。{ $price ->
    [none] { "" }
   *[other] { $price }。
 }{ lesson-told-to-bring }
lesson-told-teas = 課上會泡：{ LIST($teas) }。
lesson-told-state = { $state ->
    [seated] 您有 { $seats } 個座位，{ WHEN($until) } 以前可以退。
    [waiting] 您在候補名單上排第 { $number } 位，想要 { $seats } 個座位。
    [offered] 為您保留 { $seats } 個座位到 { WHEN($until) }。
    [full] 已經額滿，{ $waiting ->
        [0] 還沒有人候補
       *[other] { $waiting } 位候補
     }。
   *[free] 還有 { $free } 個座位。
 }
lesson-told-enrolled = 報好了，{ $seats } 個座位：{ lesson-told-head }。上課前我會提醒您。{ WHEN($until) } 以前可以退。
lesson-told-listed = 您排進候補名單了：{ lesson-told-head }。一有 { $seats } 個空位，我就告訴您。
lesson-told-full = { $free ->
    [0] 「{ $title }」，{ WHEN($starts) }，已經額滿，{ $waiting ->
        [0] 還沒有人候補
       *[other] { $waiting } 位候補
     }。
   *[other] 只剩 { $free } 個座位：{ lesson-told-head }。
 }要幫您排候補嗎？
lesson-told-did-coming = 好，到時見：{ lesson-told-head }。
lesson-told-did-absent = 謝謝您告訴我們。您的 { $seats } 個座位讓給別人了：{ lesson-told-head }。
lesson-told-did-accept = { $seats ->
    [1] 座位是您的了
   *[other] { $seats } 個座位是您的了
 }：{ lesson-told-head }。上課前我會提醒您。
lesson-told-did-decline = 座位輪到下一位了：{ lesson-told-head }。
lesson-told-seats-same = 您已經有 { $seats } 個座位了：{ lesson-told-head }。
lesson-told-reseat = { lesson-told-head }：{ $state ->
    [waiting] 候補的座位從 { $was } 個改成 { $seats } 個，好嗎？
   *[seated] 座位從 { $was } 個改成 { $seats } 個，好嗎？
 }
lesson-told-reseated = 改好了，{ $state ->
    [waiting] 您現在候補 { $seats } 個座位
   *[seated] 您現在有 { $seats } 個座位
 }：{ lesson-told-head }。
lesson-told-did-leave = 退掉了：{ lesson-told-head }。
lesson-told-taken-off = 店家已把您從名單上拿掉：{ lesson-told-head }。如果您還是想來，或是弄錯了，寫在這裡就行。
lesson-told-reseated-by-shop = 店家已把您的座位從 { $was } 個改成 { $seats } 個：{ lesson-told-head }。如果不對，寫在這裡就行。
lesson-told-transferred = 店家已把您換到另一堂課：{ lesson-told-head }。{ lesson-told-your-seats }原本的{ $was }不用來了，行事曆裡若有，請自行刪去。如果不對，寫在這裡就行。
lesson-told-written-to-one = 店家寫給您，關於「{ $title }」（{ WHEN($starts) }）：{ $text }
lesson-told-put-back = { $standing ->
    [waiting] 店家已把您放回候補名單，還是原來的順位：{ lesson-told-head }。
   *[seated] 店家已把您放回名單：{ lesson-told-head }。{ lesson-told-your-seats }
 }
lesson-told-mine = { $n }. { lesson-told-head }：{ $state ->
    [cancelled] 停開了
    [waiting] 候補第 { $number } 位
    [offered] 為您保留著座位
    [coming] { lesson-told-seats }，您會來
   *[seated] { lesson-told-seats }
 }
lesson-told-seats = { $seats } 個座位
lesson-told-was = 「{ $title }」，{ WHEN($starts) }
mistake-no-such-lesson = 這堂課已經不在名單上了。
mistake-gone-lesson = { $why ->
    [cancelled] { WHEN($starts) }的「{ $title }」已經取消了。
    [over] { WHEN($starts) }的「{ $title }」已經上完了。
   *[begun] { WHEN($starts) }的「{ $title }」已經開始了。
 }
mistake-no-such-booking = 找不到您的這筆報名。
choice-lesson-see = { $title }，{ WHEN($starts, style: "short") }
choice-lesson-later = 之後的
    .typed = 更多 / 後面的
choice-lesson-list = 課程
    .typed = 有什麼課 / 有哪些課 / 上課
choice-lesson-mine = 我的課
    .typed = 我的報名 / 我報了什麼課
choice-lesson-enrol = 報名
    .typed = 我要報名 / 好，報名
choice-lesson-wait = 幫我排候補
    .typed = 候補
choice-lesson-seats = { $count }
choice-lesson-leave = 退掉
    .typed = 取消 / 取消報名
choice-lesson-give-back = 對，退掉
    .typed = 退 / 退了 / 退吧 / 退了吧 / 退掉 / 退掉吧 / 確定 / 確定退 / 確認 / 都退了吧
choice-lesson-keep = 不，留著
    .typed = 留著 / 先留著 / 那先留著 / 那就留著 / 那還是留著 / 還是留著 / 留著吧 / 先不退 / 不退 / 不退了 / 別退
choice-lesson-reseat = 好，改吧
    .typed = 改 / 改吧 / 就這樣改 / 可以改
choice-lesson-leave-so = 不，照舊
choice-lesson-nameless = 不留名
choice-lesson-done = 就這樣

# flows/lesson-desk.yaml 與 core/functions/desk-*：店主看到的課程
choice-lesson-desk = 課程管理
    .typed = 排課 / 管理課程
desk-lessons = 已排的課程：
desk-which = 是哪一堂課？
desk-none = 還沒有排課。直接寫一句話，或按「加一堂課」。
desk-told-line = { $n }. 「{ $title }」{ WHEN($starts) }，{ desk-told-taken }
desk-told-taken = { $seats } 個座位已訂 { $taken } 個{ $waiting ->
    [0] { "" }
   *[other] ，候補 { $waiting } 筆
 }
desk-undelivered-hint = 有些訊息沒能送到。
choice-desk-lesson = { $n }. { $title }
choice-desk-later = 更後面的
choice-desk-add = 加一堂課
    .typed = 加課 / 新增課程
choice-desk-today = 今天
    .typed = 今天的名單 / 今天誰來
choice-desk-asked = 大家問什麼茶
    .typed = 大家問什麼
choice-desk-undelivered = 沒送到的訊息
choice-desk-code = 給同事的代碼
desk-what-next = 接下來呢？
choice-desk-done = 好了
choice-desk-back = 回課程表
choice-desk-this = 回這堂課
choice-desk-steps = 一步一步來
choice-desk-drop = 不要了
    .typed = 算了 / 取消 / 不排了 / 先不用
choice-desk-leave = 先不用
    .typed = 先不要 / 算了 / 不用了 / 先不用了 / 不取消了 / 保留 / 不要 / 不 / 不了 / 不取消 / 先不 / 還是不要 / 不用
desk-still-planning = 這裡正在排一堂新課。不排了請說「不要了」。
desk-not-put-yet = 還沒排進課程表。
choice-desk-put = 排進課程表
    .typed = 好 / 要 / 可以 / 放上去 / 排進去 / 排吧 / 發布 / 加進去 / 排上去 / 上架 / 就這樣 / 沒問題 / 可以了 / 好，排吧 / 冇問題
choice-desk-again = 再改一次
choice-desk-found-tick = { $mark ->
    [here] 到了：{ $n }
   *[away] 沒來：{ $n }
}
choice-desk-list = 再看一次名單
choice-desk-people = 誰會來
    .typed = 誰會來 / 名單
choice-desk-guest = 加一位沒有聊天的客人
choice-desk-move = 改時間
    .typed = 改時間 / 改期
choice-desk-alter = 改其他的
choice-desk-repeat = 定期開課
    .typed = 重複
choice-desk-write = 寫給所有會來的人
choice-desk-cancel = 取消這堂課
choice-desk-tick = { $mark ->
    [here] 到了：{ $n }
    [away] 沒來：{ $n }
   *[back] 收回：{ $n }
}
choice-desk-release = 退位：{ $n }
choice-desk-release-yes = 好，退掉
    .typed = 好 / 是
choice-desk-undo = 放回名單
    .typed = 復原 / 撤銷 / 取消剛才的 / 放回去 / 弄錯了 / 搞錯了
choice-desk-guest-yes = 好，記下來
    .typed = 好 / 記下來 / 記下來吧 / 記下 / 記吧 / 記低 / 記
choice-desk-move-yes = 好，改過去
    .typed = 好
choice-desk-no-reason = 不說原因
choice-desk-off-yes = 對，全部取消
    .typed = 對 / 好 / 好的 / 是 / 是的 / 取消 / 全部取消 / 可以
choice-desk-off-why = 寫上原因
    .typed = 寫上原因 / 寫原因 / 加上原因
choice-desk-off-only = 只有「{ $title }」
choice-desk-cancel-yes = 好，取消
    .typed = 好
choice-desk-write-yes = 好，送出
    .typed = 好 / 發 / 發出 / 送出 / 發吧 / 傳
choice-desk-door = 點名
    .typed = 點名 / 補點名
choice-desk-alter-yes = 好，改
    .typed = 好 / 改 / 改吧 / 對
choice-desk-resume = 還是照常上課
    .typed = 復原 / 撤銷 / 還原 / 照常上課 / 放回去 / 弄錯了 / 搞錯了 / 取消錯了
choice-desk-resume-yes = 對，恢復
    .typed = 對 / 好 / 好的 / 是 / 是的 / 恢復 / 全部恢復 / 可以
choice-desk-resume-only = 只有 { $n }
choice-desk-resume-one = 恢復 { $n }
choice-desk-write-only = 只給 { $n } 的人
choice-desk-every-week = 每週
choice-desk-every-other-week = 隔週
choice-desk-every-month = 每月
choice-desk-seen = 我看過了
choice-desk-change = { desk-told-field }
desk-told-field = { $field ->
    [starts] 日期和時間
    [minutes] 多久
    [seats] 座位
    [title] 名稱
    [level] 程度
    [place] 地點
    [teacher] 老師
    [price] 費用
   *[bring] 要帶什麼
 }
desk-add = 用一句話說，例如：週六晚上七點，白茶，八個座位。寫「每週六」就會定期開課。
desk-ask-field = { $field ->
    [starts] 哪一天，幾點？
    [minutes] 要上幾分鐘？
    [seats] 有幾個座位？
    [title] 叫什麼名字？
    [level] 給初學、有些基礎，還是進階的人？
    [place] 在哪裡？
    [teacher] 誰帶課？
    [price] 費用多少，在哪裡付？
   *[bring] 要請大家帶什麼？
 }
desk-planned = 我是這樣理解的。要排進課程表嗎？
desk-planned-series = 我是這樣理解的。要全部排進課程表嗎？
desk-told-level = { $level ->
    [advanced] 進階
    [intermediate] 有些基礎的人
   *[beginner] 初學
 }
desk-told-draft = 「{ $title }」{ WHEN($starts) }{ $year ->
    [none] { "" }
   *[other] （{ $year } 年）
 }，{ $minutes } 分鐘，{ $seats } 個座位，{ desk-told-level }{ $place ->
    [none] { "" }
   *[other] ，{ $place }
 }{ $teacher ->
    [none] { "" }
   *[other] ，{ $teacher }帶課
 }。{ $price ->
    [none] { "" }
   *[other] { $price }。
 }{ $bring ->
    [none] { "" }
   *[other] 攜帶物品：{ $bring }。
 }{ $tea ->
    [none] { "" }
   *[other] 會泡{ TEA($tea) }。
 }
desk-told-repeats = { $every ->
    [day] { $step ->
        [1] 每天
       *[other] 每 { $step } 天
     }
    [month] { $step ->
        [1] 每月
       *[other] 每 { $step } 個月
     }{ $by ->
        [date] { $day }日
       *[weekday] { $nth ->
            [1] 第一個
            [2] 第二個
            [3] 第三個
            [4] 第四個
           *[other] 最後一個
         }{ desk-told-weekday }
     }
   *[week] { $step ->
        [1] 每週
        [2] 隔週
       *[other] 每 { $step } 週
     }
 }{ $times ->
    [0] { $until ->
        [none] ，一直開下去
       *[other] ，到{ DAY($until) }為止
     }
   *[other] ，共 { $times } 次{ $until ->
        [none] { "" }
       *[other] ，最晚到{ DAY($until) }
     }
 }。
desk-told-weekday = { $weekday ->
    [1] 星期一
    [2] 星期二
    [3] 星期三
    [4] 星期四
    [5] 星期五
    [6] 星期六
   *[other] 星期日
 }
desk-told-date = { DAY($starts) }
desk-told-dates = 也就是 { LIST($dates) }{ $more ->
    [0] 。
    [open] ，依此類推。
   *[other] ，還有 { $more } 次。
 }
desk-told-again = 「{ $title }」會再開，第一次是 { WHEN($starts) }。
desk-put = 排好了。
desk-put-series = 都排好了。十週以後的（如果有），時間近了會自動出現在課程表上。
desk-told-lesson = 「{ $title }」{ WHEN($starts) }，{ $minutes } 分鐘，{ desk-told-level }{ $place ->
    [none] { "" }
   *[other] ，{ $place }
 }{ $teacher ->
    [none] { "" }
   *[other] ，{ $teacher }帶課
 }。{ desk-told-taken }。
desk-told-off = 這堂課已取消。{ $reason ->
    [none] { "" }
   *[other] 您寫的是：{ $reason }
 }
desk-people = 「{ $title }」的名單：
desk-nobody = 「{ $title }」還沒有人訂位。
desk-told-more = 名單上還有 { $count } 位。
desk-told-person = { $n }. { $name }，{ $seats } 位{ $state ->
    [coming] ，說會來
    [here] ，到了
    [away] ，沒來
    [waiting] ，候補中
    [offered] ，座位為他留著
   *[booked] { "" }
 }
desk-told-person-untold = { desk-told-person }（沒辦法提醒）
desk-tick = 人到了就按號碼。已經到的，按鈕會換成「沒來」，可以更正。
desk-attended-never = 最近幾週沒有上過課。
desk-attended-none = 那時候沒有上課。
desk-told-attended = 「{ $title }」{ WHEN($starts) }：{ $booked ->
    [0] 沒有人訂位。
   *[other] 到 { $here } 位，沒來 { $away } 位{ $unsaid ->
        [0] 。
       *[other] ，沒點到 { $unsaid } 位。
     }
 }
desk-told-attended-line = { $n }. { $name }，{ $seats } 位：{ desk-told-came }
desk-told-came = { $state ->
    [here] 到了
    [away] 沒來
   *[unsaid] 沒點到
 }
desk-told-attended-one = { $name }，「{ $title }」{ WHEN($starts) }：{ desk-told-came }。
desk-told-ticked = { $n }. { $name }：{ $mark ->
    [here] 到了。
    [away] 沒來。
   *[back] 已收回。
}
desk-ask-guest = 把姓名、電子郵件和座位寫在一行，例如：林美，mei@example.org，2。沒有郵件地址的，寫名字就行。
desk-ask-guest-name = 把姓名和座位寫在一行，例如：林美，2。這裡還不能寄信，有變動請您自己告訴對方。
desk-told-no-phone = 這裡不記電話號碼，請您自己留著。
desk-told-guest-untold = { $name }在「{ $title }」（{ WHEN($starts) }）有 { $count } 個座位。沒有郵件地址，就沒辦法提醒，課有變動也通知不到，要請您自己說。要記下來嗎？
desk-told-guest-seated = { $name }在「{ $title }」（{ WHEN($starts) }）有 { $count } 個座位，並會寄信到 { $mail }。要記下來嗎？
desk-told-guest-waiting = 「{ $title }」沒有那麼多空位。{ $name }會排候補，並寄信到 { $mail }。要記下來嗎？
desk-who = 說的是哪一位？請寫名字。
desk-found-none = 名單上找不到叫這個名字的人。
desk-found-one = 名單上有：
desk-found-some = 不只一位符合：
desk-found-which = 不只一位符合，是哪一位？
desk-told-found = { $n }. { $name }：「{ $title }」{ WHEN($starts) }，{ $seats } 個座位{ $state ->
    [coming] ，會來
    [here] ，到了
    [away] ，沒來
    [waiting] ，在候補名單上
    [offered] ，有座位留著
   *[booked] { "" }
}{ $reach ->
    [none] ，無法提醒
   *[other] { "" }
}
desk-told-release = { $name }退掉「{ $title }」（{ WHEN($starts) }）的{ $standing ->
    [waiting] 候補
   *[other] {" "}{ $count } 個座位
 }{ $reach ->
    [mail] ，並會收到一封信
    [chat] ，對方會在對話裡收到通知
   *[other] { "" }
 }。要退嗎？
desk-released = 退掉了；有空位就會問候補的人。
desk-put-back = 放回名單了；通知得到的話，也會告訴對方。
desk-gone-on = 那個位子已經給了候補的人，這裡沒辦法復原。
desk-told-they-hear = { $reach ->
    [mail] 對方會收到一封信
    [chat] 對方會在對話裡收到通知
   *[other] 通知不到對方，請您親自告訴
 }
desk-told-reseat = { $name }在「{ $title }」（{ WHEN($starts) }）從 { $was } 個座位改成 { $seats } 個；{ desk-told-they-hear }。要改嗎？
desk-told-ask-seats = { $name }一共要幾個座位？現在是 { $was } 個：「{ $title }」，{ WHEN($starts) }。
desk-told-seats-same = { $name }本來就是 { $was } 個座位：「{ $title }」，{ WHEN($starts) }。要改成幾個？
desk-told-transfer = { $name }退掉{ $was }，改上「{ $title }」（{ WHEN($starts) }），{ $count } 個座位；{ desk-told-they-hear }。要改嗎？
desk-told-ask-lesson = 要把{ $name }換到哪一堂？請寫日子或課名。現在是「{ $title }」，{ WHEN($starts) }。
desk-told-none-there = 那時沒有別的課。要把{ $name }換到哪一堂？請寫日子或課名。
desk-told-ask-note = 要寫什麼給{ $name }？會一字不改地傳出，只給這一位。
desk-told-note = 只給{ $name }：「{ $text }」。{ $reach ->
    [mail] 會寄信過去
   *[other] 會傳到對方的對話裡
 }。要傳嗎？
desk-guest-changed = 改好了。
desk-nothing-to-undo = 這裡沒有可以復原的。
mistake-lesson-guest-there = 這位在那堂已經有訂位了。
mistake-lesson-guest-no-room = 「{ $title }」（{ WHEN($starts) }）一共 { $most } 個座位，還空 { $free } 個，{ $name }沒辦法有 { $seats } 個。要加座位，請選「改其他的」。
mistake-lesson-guest-untold = 訊息傳不到{ $name }：沒有留地址，或是對方不再收訊息。請您親自告訴。
choice-desk-found-this = { $n }
choice-desk-guest-seats = 改座位
choice-desk-guest-other = 換到別堂
choice-desk-guest-write = 寫給這位
choice-desk-guest-other-yes = 好，換過去
    .typed = 好 / 改 / 改吧 / 對 / 換
choice-desk-reverse = 復原
    .typed = 撤銷 / 取消剛才的 / 弄錯了 / 搞錯了 / 改回來 / 改回去 / 換回來
desk-guest-down = 記下來了，通知信正在寄出。
desk-guest-down-untold = 記下來了。名單上會註明這位沒辦法提醒。
desk-ask-move = 改到什麼時候？只說日子，時間不變；只說幾點，日子不變。
desk-told-move = 「{ $title }」從 { WHEN($was) } 改到 { WHEN($starts) }。{ desk-told-reach }要改嗎？
desk-told-lasts = 「{ $title }」（{ WHEN($starts) }）改為 { NUMBER($minutes) } 分鐘。{ desk-told-reach }要改嗎？
desk-told-reach = { $reached ->
    [0] { $unreached ->
        [0] 還沒有人訂位。
       *[other] 有 { $unreached } 筆訂位，這裡都通知不到，請您自己告訴他們。
     }
   *[other] 會通知 { $reached } 筆訂位。{ desk-told-unreached }
 }
desk-told-unreached = { $unreached ->
    [0] { "" }
   *[other] 另有 { $unreached } 筆這裡通知不到，請您自己告訴他們。
 }
desk-moved = 改好了，正在通知訂位的人。
desk-moved-some = 改好了。通知不到的人列在「沒送到的訊息」裡，請您自己告訴他們。
desk-ask-reason = 為什麼？您寫的話會一字不改地傳給所有訂位的人。
desk-told-cancel = 「{ $title }」{ WHEN($starts) } 就不上了。{ desk-told-reach }要取消嗎？
desk-cancelled = 取消了，正在通知訂位的人。
desk-cancelled-some = 取消了。通知不到的人列在「沒送到的訊息」裡，請您自己告訴他們。
desk-off-which = 要結束哪一個系列？
desk-off-none = 課程表上沒有系列課。
desk-off-nothing = 那些日子沒有課，不用取消。
desk-off-later = 這些課還沒排進課程表，之後也不會排進去。
desk-off-changed = 其中一堂剛才有了變動。現在是這樣：
desk-off-sure = { $count ->
    [1] 這一堂課就不開了。要取消嗎？
   *[other] 這 { $count } 堂課就不開了。要全部取消嗎？
 }
desk-told-off-more = 還有 { $more } 堂。
desk-told-series-ends = 「{ $title }」到此為止：{ DAY($starts) }之後不再排課。
desk-told-series-skips = 「{ $title }」還沒排進課程表的這幾天也會跳過：{ LIST($dates) }。
desk-told-off-people = { desk-told-reach }{ $people ->
    [0] { "" }
   *[other] 共 { $people } 位，每堂課各通知一次。
 }
desk-told-off-reason = 附上原因，一字不改：「{ $reason }」
desk-off-put = 已取消，正在通知每一位訂位的人。
desk-off-put-quietly = 取消了，沒有人訂位。
desk-off-put-some = 已取消。訊息到不了的人列在「沒送到的訊息」裡，請您自己告訴他們。
desk-off-put-later = 好了，這些課不會再排進課程表。
desk-resume-sure = { $count ->
    [0] 那些課還沒排進課程表。要恢復嗎？
    [1] 這一堂課會照常上。要恢復嗎？
   *[other] 這 { $count } 堂課會照常上。要全部恢復嗎？
 }
desk-resume-seats = 座位照原來的；不能再來的人可以退。
desk-told-series-back = 「{ $title }」照原來的排下去。
desk-resume-none = 接下來的課沒有停開的。
desk-resumed = 恢復了，正在通知每一位訂位的人。
desk-resumed-some = 恢復了。訊息送不到的人列在「沒送到的訊息」裡，請您自己告訴他們。
desk-resumed-quietly = 恢復了。
desk-off-listed = 停開的課：
desk-ask-alter = 要改哪一項？
desk-told-alter = 「{ $title }」{ WHEN($starts) }，{ desk-told-field }：{ $words }。{ desk-told-reach }要改嗎？
desk-reminds = 有座位的人都會自動收到提醒：一星期前、前一晚、上課前兩小時，半夜不吵人。別的事請寫給他們。
desk-told-altered = 改好了：「{ $title }」{ WHEN($starts) }，{ desk-told-field }：{ $words }。跟訂位的人有關的，會通知他們。
desk-ask-repeat = 多久一次？
desk-ask-write = 要告訴他們什麼？會一字不改地送出。
desk-write-sure = { $reached ->
    [0] 「{ $title }」（{ WHEN($starts) }）：「{ $text }」從這裡誰也送不到。
   *[other] 「{ $title }」（{ WHEN($starts) }）：「{ $text }」會送給 { $reached } 筆訂位。
 }{ desk-told-unreached }要送出嗎？
desk-untold = 通知不到的有：{ LIST($names) }。
desk-told-name = { $name }
desk-write-nobody = 還沒有人訂位，沒有對象可以通知。
desk-write-all-sure = { $reached ->
    [0] 「{ $text }」從這裡誰也送不到。
   *[other] 「{ $text }」會送給 { $reached } 位{ $count ->
        [1] 。
       *[other] （{ $count } 堂課，每人一次）。
     }
 }{ desk-told-unreached }要送出嗎？
desk-written = 正在傳送。
desk-written-some = 送得到的，正在傳送。其他人列在「沒送到的訊息」裡，請您自己告訴他們。
desk-nothing-today = 今天沒有課。
desk-told-next = 下一堂：「{ $title }」{ WHEN($starts) }，{ desk-told-taken }
desk-none-then = 那天沒有課。
desk-no-stock = 我不記庫存：有人問有沒有貨，我會說不知道，並把問題轉給您。新到的茶，或要改沖泡的茶，請寫進店裡的檔案，下次啟動就認得。
desk-swaps-singly = 課要一節一節改，每節都會通知訂位的人。例如先說「把12號的第一杯茶改到19號下午三點」，再說另一節。
desk-hours-stay = 客人問營業時間，聽到的還是原來的：那寫在店裡自己的回覆檔案裡。
desk-told-day = 今天：「{ $title }」{ WHEN($starts) }，{ desk-told-taken }
desk-told-morning = 早安。今天的安排：
desk-told-waiting = 有 { $count } 個問題等著回答。
desk-nothing-asked = 最近 30 天沒有人問茶。
desk-asked = 最近 30 天最多人問的：
desk-bitter = 有人說「太苦」的：
desk-told-tally = { $n }. { TEA($tea) }：{ $count } 次
desk-all-delivered = 就目前所知，全都送到了。
desk-no-notes = 我不記客人的備註，只留他們自己告訴我的；請寫在您自己的本子上。
desk-undelivered = 這些訊息沒能送到：
desk-told-undelivered = { $name }，{ WHEN($at) }：{ $why ->
    [address] 電子郵件地址不對
    [could-not-be-reached] 聯絡不上
    [no-address] 沒有留下地址；請親自告訴他們
    [no-words] 訊息的文字出了錯；請看看對方在等什麼
    [restored] 還原備份後沒有再送
    [too-late] 送到也太晚了
   *[other] 對方的管道不收
 }
desk-told-undelivered-about = { desk-told-undelivered }（{ $about }）
desk-seen = 收起來了。
desk-code = 這組代碼能讓一位同事成為店主，只能用一次，十分鐘內有效。請對方在自己的聊天裡寫：
    { $code }
desk-code-told = 代碼已經給了。再要一組，舊的就作廢。
lesson-told-written-down = 店家已為您留位：{ lesson-told-head }。{ lesson-told-your-seats }{ lesson-told-to-bring }
lesson-told-written-down-waiting = 店家已把您排進候補：{ lesson-told-head }。有空位時會寄信給您。
mistake-lesson-no-mail = 還不能寄信：請管理這裡的人先設定郵件伺服器。
mistake-lesson-guest-no-mail = 還不能寄信：請管理這裡的人先設定郵件伺服器。在那之前，請只寫名字，不寫地址。
mistake-lesson-guest-mail = 「{ $words }」不是電子郵件地址。沒有地址的，寫名字就行。
mistake-lesson-guest-no-name = 這一行裡找不到名字。
mistake-lesson-guest-name-long = 名字最多 { $most } 個字。
mistake-lesson-guest-waits-untold = { $free ->
    [0] 已經沒有座位了
   *[other] 只剩 { $free } 個座位
 }；候補要有郵件地址，有空位才通知得到。
mistake-lesson-words-too-long = 請在 { $most } 個字以內說完。
mistake-lesson-repeats-unclear = 要多久重複一次？例如「每月」「隔週一次，共六次」「每月第一個星期六」。
mistake-lesson-not-said = 這裡沒聽懂。要排課請說日子和時間，或從下面選。
mistake-lesson-repeats-already = 這堂課已經是定期課程了。
