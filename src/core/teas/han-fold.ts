/** Folds traditional characters, and writings often mistaken for one another, onto one simplified form. Only what people write to a tea shop; no dictionary. */

/** Traditional then simplified, pair after pair. */
const pairs =
  '龍龙鐵铁觀观紅红綠绿黃黄烏乌鳳凤單单叢丛種种凍冻頂顶東东針针銀银壽寿鴨鸭蘭兰蜜蜜滇滇門门錫锡嶺岭薩萨裏里裡里' +
  '臺台灣湾廣广雲云國国產产園园葉叶莖茎質质量量個个們们這这麼么樣样點点對对過过還还開开關关問问間间時时間间' +
  '從从來来會会說说話话語语請请謝谢讓让講讲識识記记試试詢询該该課课調调談谈論论證证評评譯译護护詳详' +
  '幾几兩两萬万億亿雙双隻只條条張张塊块顆颗罐罐號号數数價价錢钱買买賣卖購购費费貨货運运郵邮寄寄倉仓庫库' +
  '貴贵賬账賠赔貼贴賞赏負负質质資资賀贺贈赠聖圣禮礼誕诞節节' +
  '壺壶蓋盖碗碗盤盘鍋锅濾滤網网燜焖悶闷溫温濕湿涼凉熱热滾滚燒烧煙烟燙烫爐炉焗焗電电氣气壓压' +
  '濃浓澀涩鹹咸鮮鲜餿馊變变聞闻嘗尝嚐尝覺觉潤润順顺濁浊淨净潔洁髒脏垢垢黴霉乾干' +
  '藥药醫医孕孕嬰婴兒儿媽妈爺爷奶奶孫孙寶宝餵喂雞鸡魚鱼' +
  '養养護护樹树櫃柜櫥橱層层盒盒儲储藏藏舊旧陳陈' +
  '頭头腦脑臟脏腎肾貧贫鈣钙鎂镁鋅锌' +
  '學学習习師师報报堂堂級级員员' +
  '長长遠远選选適适遲迟邊边進进運运週周達达' +
  '寫写圖图書书筆笔畫画讀读聽听視视' +
  '車车輛辆軟软輕轻較较輸输' +
  '飲饮餅饼飯饭餐餐館馆饅馒' +
  '爛烂煩烦為为無无愛爱' +
  '與与舉举興兴歲岁' +
  '專专業业務务動动勁劲勞劳勻匀' +
  '後后復复從从徵征' +
  '應应總总態态慣惯憶忆懷怀懶懒戀恋' +
  '擔担據据擠挤換换掃扫採采損损搖摇撈捞擺摆' +
  '斷断於于昇升曬晒暫暂曆历' +
  '沖冲決决淺浅減减測测準准溝沟滿满漲涨潑泼澤泽濟济灑洒灘滩' +
  '爾尔牆墙獎奖獻献現现環环瑪玛' +
  '確确礙碍碼码磚砖' +
  '稱称穩稳積积穀谷' +
  '窩窝競竞簡简簽签籃篮類类' +
  '緊紧緩缓線线練练組组細细終终結结給给絡络絲丝經经維维綱纲網网緣缘編编縮缩續续纖纤纔才' +
  '罵骂聯联職职聲声' +
  '臉脸腫肿舊旧艙舱' +
  '處处虛虚蟲虫蠔蚝衛卫衝冲裝装製制複复補补襯衬' +
  '規规親亲覽览觸触' +
  '訂订計计訊讯許许設设訪访註注詞词誤误誰谁謂谓譜谱' +
  '豐丰貓猫趕赶跡迹踐践' +
  '轉转辦办農农醬酱釀酿釋释鐘钟鍾钟錯错鍵键鏡镜鑰钥鋼钢鑄铸' +
  '閉闭閒闲闆板隊队階阶隨随險险隱隐雜杂離离難难雪雪靈灵靜静' +
  '響响頁页項项須须預预領领題题顏颜願愿顧顾顯显風风飛飞' +
  '養养餘余馬马驗验驚惊髮发發发鬆松鬧闹' +
  '麗丽麥麦麵面齊齐齡龄龐庞' +
  '實实審审寬宽將将屬属島岛幣币帶带師师幫帮廚厨廠厂彈弹強强當当' +
  '嗎吗嘗尝嚴严囑嘱團团圍围場场壞坏墊垫壯壮夠够夢梦夾夹奪夺婦妇娛娱' +
  '側侧備备傷伤傳传債债傾倾僅仅價价優优儘尽盡尽億亿' +
  '億亿內内冊册凈净創创別别劃划劇剧劑剂勝胜' +
  '協协參参吳吴員员啟启啓启喚唤喪丧嘆叹噸吨' +
  '係系繫系擇择搶抢撐撑攜携敗败敵敌' +
  '榮荣構构槍枪樂乐機机檔档檢检檯台櫃柜權权歡欢歐欧歸归殘残' +
  '殺杀毫毫淚泪湯汤潮潮濱滨瀉泻' +
  '狀状獨独獲获療疗瘋疯癢痒癮瘾症症' +
  '監监盜盗盧卢眾众睏困矯矫' +
  '禁禁筍笋節节籌筹糧粮糾纠紀纪約约級级紙纸純纯納纳' +
  '蘿萝蘋苹薦荐蘇苏蔥葱蓮莲莊庄華华蒼苍' +
  '觀观訴诉誌志認认誠诚諮咨' +
  '輔辅輪轮辭辞遺遗鄉乡鄰邻醜丑銷销鋪铺鎖锁' +
  '陽阳陰阴陸陆際际隔隔雖虽電电霧雾韓韩頓顿頻频額额饋馈駕驾騎骑騙骗' +
  '鬱郁鳥鸟鷹鹰鹽盐黨党鼻鼻齒齿龜龟' +
  '佈布僱雇傢家像像沒没冇冇' +
  '亂乱並并則则塵尘況况標标瀝沥獸兽豬猪鈍钝鈕钮銹锈雛雏嚨咙佔占丟丢亞亚剛刚區区廬庐慶庆憂忧慮虑揀拣掛挂暈晕暢畅樓楼橫横檳槟漬渍漿浆潰溃溈沩營营瘍疡癇痫癲癫盞盏粵粤紹绍絕绝統统腳脚膽胆臨临舖铺術术見见証证詩诗財财貢贡責责賽赛贊赞蹤踪輩辈連连遊游鉛铅鑒鉴頸颈餌饵餾馏驟骤體体鹼碱涇泾獅狮寧宁尋寻導导峽峡幹干彎弯徑径恆恒惡恶戲戏揚扬攤摊殼壳渦涡滯滞煉炼爭争瑤瑶畢毕異异疊叠禪禅窯窑紋纹綁绑緻致織织罷罢膚肤覓觅賢贤贏赢載载鄭郑銅铜錦锦頰颊甌瓯惱恼撿捡攪搅晝昼歷历滲渗燉炖礎础膩腻衆众襲袭讚赞遷迁閱阅陣阵餓饿遞递鳴鸣諾诺貫贯觸触褲裤趙赵鄰邻銳锐錄录鑲镶隨随韻韵額额籤签繩绳罰罚脹胀脈脉艙舱蒸蒸虧亏裡里譽誉賴赖賺赚軍军輝辉轟轰遜逊鄧邓釀酿鉤钩鋒锋錶表鎊镑頌颂飽饱餵喂驅驱' +
  '兌兑吋寸呎尺磅磅両两駿骏楊杨檸柠檬檬馬马羅罗罌罂鴿鸽蓮莲薔蔷薇薇鈴铃蕎荞蘆芦薈荟漢汉決决楓枫榆榆嶽岳嶼屿澎澎橘橘欖榄倉仓侖仑崙仑潭潭濟济穎颖緯纬縣县羣群聰聪臘腊艷艳蘊蕴襪袜謎谜貼贴遞递鄧邓醃腌鈉钠閩闽陝陕順顺顛颠飾饰駝驼騰腾鯉鲤鵝鹅麩麸龔龚棗枣絞绞敘叙訓训渾浑湊凑澱淀灣湾焙焙燈灯猶犹瓊琼痠酸睜睁礦矿禿秃窮穷籠笼糰团綿绵緒绪縫缝罈坛翹翘脫脱膠胶茲兹萊莱蔭荫虜虏蝦虾蠟蜡製制誇夸賓宾蹟迹辣辣鋁铝鍍镀鎮镇闊阔颳刮飄飘餚肴駱骆鮑鲍鯨鲸鴛鸳鶴鹤麼么點点' +
  '嗆呛鯁鲠濺溅顫颤嬤嬷蕁荨澆浇噴喷慘惨廁厕狹狭嘔呕嚇吓繃绷痙痉攣挛癱瘫藍蓝鸚鹦鵡鹉';

/** Writings that stand for another in tea names: variant forms, Japanese forms, and the usual slips. */
const variants =
  '観观鉄铁竜龙緑绿黒黑沢泽枞丛樅丛欉丛枞丛峯峰栀枝梔枝奇祁罗螺羅螺耳洱尔洱爾洱官观鼎顶糙玄碰膨椪膨曡叠凃涂亳毫簿薄鷄鸡葵魁砂沙妙沙' +
  '渌淥痺痹燻熏脣唇嚥咽噁恶妳你牠它祂它壼壶着著濇涩溫温麽么甚什裡里喫吃迴回姜薑搾榨';

const folds: ReadonlyMap<string, string> = makeFolds();

function makeFolds(): Map<string, string> {
  const table = new Map<string, string>();
  for (const source of [pairs, variants]) {
    const characters = source.split('');
    for (let i = 0; i + 1 < characters.length; i += 2) table.set(characters[i] ?? '', characters[i + 1] ?? '');
  }
  return table;
}

/** One character folded; a fold may lead to another (關 → 关), which is followed once. */
export function foldHan(character: string): string {
  const once = folds.get(character) ?? character;
  return folds.get(once) ?? once;
}

/** Written alike in both scripts, or shared with an everyday word of the other: they tell nothing about the script. */
const shared = new Set(
  '喂后里台只面干松云谷余系冲丑制志才板咸注准困布家升回采征向周尺寸吃了沙晒霉郁雇磅杰占卷托并游致表挂酸群岳迹'.split(
    '',
  ),
);

/** What a character says about the script it is written in. */
export function scriptOf(character: string): 'traditional' | 'simplified' | null {
  if (traditionalOnly.has(character)) return 'traditional';
  return simplifiedOnly.has(character) ? 'simplified' : null;
}

const listed = pairs.split('');
const traditionalOnly = new Set(listed.filter((c, i) => i % 2 === 0 && listed[i + 1] !== c));
const simplifiedOnly = new Set(
  listed.filter((c, i) => i % 2 === 1 && listed[i - 1] !== c && !shared.has(c) && !traditionalOnly.has(c)),
);
